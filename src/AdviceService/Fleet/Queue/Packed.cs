using System.IO.Compression;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace AdviceService.Fleet.Queue;

/// <summary>What goes through the queue: compressed, since a message may have 1 MiB by default.</summary>
internal static class Packed
{
    /// <summary>A document as message.</summary>
    public static byte[] Of<T>(T document, JsonTypeInfo<T> type) => Of(JsonSerializer.SerializeToUtf8Bytes(document, type));

    /// <summary>Bytes as message.</summary>
    public static byte[] Of(ReadOnlySpan<byte> bytes)
    {
        using var packed = new MemoryStream();
        using (var zip = new BrotliStream(packed, CompressionLevel.Fastest))
            zip.Write(bytes);
        return packed.ToArray();
    }

    /// <summary>The document of a message.</summary>
    public static T Read<T>(byte[] message, JsonTypeInfo<T> type) => JsonSerializer.Deserialize(Read(message), type)!;

    /// <summary>The bytes of a message.</summary>
    public static byte[] Read(byte[] message)
    {
        using var zip = new BrotliStream(new MemoryStream(message), CompressionMode.Decompress);
        using var bytes = new MemoryStream();
        zip.CopyTo(bytes);
        return bytes.ToArray();
    }
}
