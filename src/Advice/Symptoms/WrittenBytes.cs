using System.Runtime.InteropServices;

namespace Advice.Symptoms;

/// <summary>Reads what was learned where it lies: it is some megabytes, and a copy of them lives as long as the reader.</summary>
internal static class WrittenBytes
{
    /// <summary>Opens bytes for reading.</summary>
    public static BinaryReader Open(ReadOnlyMemory<byte> written) => MemoryMarshal.TryGetArray(written, out var part)
        ? new(new MemoryStream(part.Array!, part.Offset, part.Count, writable: false))
        : new(new MemoryStream(written.ToArray(), writable: false));
}
