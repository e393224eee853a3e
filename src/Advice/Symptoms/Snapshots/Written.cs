using System.Runtime.InteropServices;

namespace Advice.Symptoms.Snapshots;

/// <summary>Numbers as they stand in bytes that were written by this build of the program, read where they lie.</summary>
/// <param name="bytes">The bytes.</param>
internal readonly struct Written<T>(ReadOnlyMemory<byte> bytes)
    where T : unmanaged
{
    /// <summary>These numbers.</summary>
    public Written(T[] numbers)
        : this(MemoryMarshal.AsBytes(numbers.AsSpan()).ToArray())
    {
    }

    /// <summary>All of them.</summary>
    public ReadOnlySpan<T> Span => MemoryMarshal.Cast<byte, T>(bytes.Span);

    /// <summary>How many there are.</summary>
    public int Length => Span.Length;

    /// <summary>The one with that place.</summary>
    public T this[int place] => Span[place];

    /// <summary>Reads what <see cref="WriteTo"/> wrote.</summary>
    public static Written<T> ReadFrom(BinaryReader reader) => new(WrittenBytes.Next(reader, reader.Read7BitEncodedInt()));

    /// <summary>Writes them.</summary>
    public void WriteTo(BinaryWriter writer)
    {
        writer.Write7BitEncodedInt(bytes.Length);
        writer.Write(bytes.Span);
    }
}
