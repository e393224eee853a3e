using System.Runtime.CompilerServices;
using System.Text;
using AdviceService.Fleet;
using AdviceService.Fleet.Scoring;

namespace AdviceService.Tests.Fleet.Queue;

/// <summary>A fleet that comes in by parts, each once it is let in: what a test waits for happens while there is work left, however slow the machine.</summary>
/// <param name="lines">The fleet.</param>
/// <param name="linesOfAPart">How many lines a part has.</param>
internal sealed class InParts(string lines, int linesOfAPart) : IDisposable
{
    private readonly SemaphoreSlim _open = new(0);

    /// <summary>Lets in the next parts.</summary>
    public void Let(int parts) => _open.Release(parts);

    public async IAsyncEnumerable<NumberedLine> ReadAsync([EnumeratorCancellation] CancellationToken cancel)
    {
        var read = 0;
        await foreach (var line in FleetLines.Of(new MemoryStream(Encoding.UTF8.GetBytes(lines)), isTable: false, cancel))
        {
            if (read++ % linesOfAPart == 0)
                await _open.WaitAsync(cancel);
            yield return line;
        }
    }

    public void Dispose() => _open.Dispose();
}
