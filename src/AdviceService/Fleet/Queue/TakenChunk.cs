using System.Globalization;
using NATS.Client.JetStream;

namespace AdviceService.Fleet.Queue;

/// <summary>A chunk that a worker has taken and not yet acknowledged.</summary>
/// <param name="Message">As it came.</param>
/// <param name="Run">Name of the run.</param>
/// <param name="Index">Its number within it.</param>
/// <param name="Data">The chunk, packed.</param>
/// <param name="Tries">How often it was given to a worker, this time counted.</param>
internal sealed record TakenChunk(INatsJSMsg<byte[]> Message, string Run, int Index, byte[] Data, ulong Tries)
{
    /// <summary>Reads what its subject says.</summary>
    public static TakenChunk Of(INatsJSMsg<byte[]> message, byte[] data, ulong tries)
    {
        var parts = message.Subject.Split('.');
        return new TakenChunk(message, parts[^2], int.Parse(parts[^1], CultureInfo.InvariantCulture), data, tries);
    }
}
