using System.Runtime.InteropServices;

namespace Advice.Symptoms;

/// <summary>Reads what was learned where it lies, and arrays of numbers at once.</summary>
internal static class WrittenBytes
{
    /// <summary>Opens bytes for reading.</summary>
    public static BinaryReader Open(ReadOnlyMemory<byte> written) => MemoryMarshal.TryGetArray(written, out var part)
        ? new(new MemoryStream(part.Array!, part.Offset, part.Count, writable: false))
        : new(new MemoryStream(written.ToArray(), writable: false));

    /// <summary>Writes an array as it stands in memory: only this build of the program reads it.</summary>
    public static void WriteArray<T>(this BinaryWriter bytes, T[] numbers)
        where T : unmanaged
    {
        bytes.Write7BitEncodedInt(numbers.Length);
        bytes.Write(MemoryMarshal.AsBytes(numbers.AsSpan()));
    }

    /// <summary>Reads an array.</summary>
    public static T[] ReadArray<T>(this BinaryReader bytes)
        where T : unmanaged
    {
        var numbers = new T[bytes.Read7BitEncodedInt()];
        bytes.BaseStream.ReadExactly(MemoryMarshal.AsBytes(numbers.AsSpan()));
        return numbers;
    }
}
