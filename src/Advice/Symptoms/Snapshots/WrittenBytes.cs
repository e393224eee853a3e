using System.Runtime.InteropServices;

namespace Advice.Symptoms.Snapshots;

/// <summary>Reads what was learned where it lies: it is some megabytes, and a copy of them lives as long as the reader.</summary>
internal static class WrittenBytes
{
    /// <summary>Opens bytes for reading.</summary>
    public static BinaryReader Open(ReadOnlyMemory<byte> written) => MemoryMarshal.TryGetArray(written, out var part)
        ? new(new MemoryStream(part.Array!, part.Offset, part.Count, writable: false, publiclyVisible: true))
        : Open(written.ToArray());

    /// <summary>The next bytes, not copied.</summary>
    /// <param name="reader">Reads bytes in memory that it may show.</param>
    /// <param name="length">How many.</param>
    public static ReadOnlyMemory<byte> Next(BinaryReader reader, int length)
    {
        var stream = (MemoryStream)reader.BaseStream;
        if (!stream.TryGetBuffer(out var all))
            throw new ArgumentException("These bytes may not be shown.", nameof(reader));
        var next = all.AsMemory((int)stream.Position, length);
        stream.Position += length;
        return next;
    }
}
