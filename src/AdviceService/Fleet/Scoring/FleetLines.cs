using System.IO.Pipelines;

namespace AdviceService.Fleet.Scoring;

/// <summary>The lines of a fleet, whatever form it has.</summary>
internal static class FleetLines
{
    private const int ReadAtOnce = 64 * 1024;

    /// <summary>Its lines.</summary>
    public static IAsyncEnumerable<NumberedLine> Of(Stream fleet, bool isTable, CancellationToken cancel) => isTable
        ? CsvLines.ReadAsync(fleet, cancel)
        : NdjsonLines.ReadAsync(PipeReader.Create(fleet, new StreamPipeReaderOptions(bufferSize: ReadAtOnce, leaveOpen: true)), cancel);
}
