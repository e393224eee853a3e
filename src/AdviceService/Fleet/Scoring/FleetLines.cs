using System.IO.Pipelines;
using System.Security.Cryptography;

namespace AdviceService.Fleet.Scoring;

/// <summary>The lines of a fleet, whatever form it has.</summary>
internal static class FleetLines
{
    private const int ReadAtOnce = 64 * 1024;

    /// <summary>Its lines.</summary>
    public static IAsyncEnumerable<NumberedLine> Of(Stream fleet, bool isTable, CancellationToken cancel) => isTable
        ? CsvLines.ReadAsync(fleet, cancel)
        : NdjsonLines.ReadAsync(PipeReader.Create(fleet, new StreamPipeReaderOptions(bufferSize: ReadAtOnce, leaveOpen: true)), cancel);

    /// <summary>What tells one fleet from another; nothing for a pipe, which can be read only once.</summary>
    public static async Task<string?> HashAsync(Stream fleet, CancellationToken cancel)
    {
        if (!fleet.CanSeek)
            return null;
        var hash = await SHA256.HashDataAsync(fleet, cancel);
        fleet.Position = 0;
        return Convert.ToHexStringLower(hash);
    }
}
