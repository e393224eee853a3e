using System.Text;

namespace AdviceService.Tests.Verbs;

/// <summary>A console that keeps what one flow of calls writes for whoever asked for it, and passes on the rest.</summary>
internal sealed class CaughtWriter(TextWriter rest) : TextWriter
{
    private readonly AsyncLocal<TextWriter?> _caught = new();

    public override Encoding Encoding => rest.Encoding;

    /// <summary>What the caller and all that it calls write from now on.</summary>
    public StringWriter Catch()
    {
        var caught = new StringWriter();
        _caught.Value = Synchronized(caught);
        return caught;
    }

    public override void Write(char value) => (_caught.Value ?? rest).Write(value);

    public override void Write(string? value) => (_caught.Value ?? rest).Write(value);
}
