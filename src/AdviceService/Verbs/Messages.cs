using Advice.Rules.Checking;

namespace AdviceService.Verbs;

/// <summary>Prints what is wrong in files, each message with the line that it is about.</summary>
internal static class Messages
{
    public static void Print(TextWriter output, IEnumerable<RuleFileError> messages, string folder)
    {
        foreach (var line in messages.SelectMany(message => Excerpt.Of(message, folder)))
            output.WriteLine(line);
    }
}
