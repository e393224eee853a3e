using System.Security.Cryptography;
using Advice.Rules.Files;
using Advice.Symptoms;

namespace Advice.Rules.RuleSets;

/// <summary>
/// The parsed files of a rule set beside them with what is learned from their phrases, so that a start need neither parse nor learn: that takes more
/// time than all else. It is used only
/// where it was written by this build of the program from exactly these files, which had no errors then: entries are bound as those of the files
/// would be, but whether they go together is not asked again.
/// </summary>
public static class Snapshot
{
    /// <summary>Its name in the folder of the rules.</summary>
    public const string FileName = "rules.snapshot";

    /// <summary>Writes the snapshot of a folder.</summary>
    /// <exception cref="RuleSetException">Something is wrong with the rule files; every error is named.</exception>
    public static void Write(string directory)
    {
        var (files, nodes, catalogue) = RuleSetLoader.Parse(directory);
        using var content = new MemoryStream();
        using var writer = new BinaryWriter(content);
        var nodeWriter = new NodeWriter(writer);
        writer.Write7BitEncodedInt(nodes.Count);
        foreach (var node in nodes)
            nodeWriter.WriteFile(node);
        writer.Write(new ComplaintReader(catalogue).Learned().Span);
        writer.Flush();
        File.WriteAllBytes(Path.Combine(directory, FileName), [.. Key(Revision.Of(files), content.ToArray()), .. content.ToArray()]);
    }

    /// <summary>Whether the folder has a snapshot that a start would use.</summary>
    public static bool IsUsable(string directory) => Read(directory, RuleSetLoader.RevisionOf(directory), places: false) is not null;

    /// <summary>The parsed files and what was learned; null where there is no snapshot, or one of other files, of another build or with other bytes than were written.</summary>
    /// <param name="directory">The folder of the rules.</param>
    /// <param name="revision">Hash of its files.</param>
    /// <param name="places">Whether anybody will ask where something stands in the files.</param>
    internal static (IReadOnlyList<MappingNode> Files, ReadOnlyMemory<byte> Learned)? Read(string directory, string revision, bool places)
    {
        var path = Path.Combine(directory, FileName);
        if (!File.Exists(path))
            return null;
        var bytes = File.ReadAllBytes(path);
        if (bytes.Length < SHA256.HashSizeInBytes || !Key(revision, bytes.AsSpan(SHA256.HashSizeInBytes)).AsSpan().SequenceEqual(bytes.AsSpan(0, SHA256.HashSizeInBytes)))
            return null;
        using var reader = new BinaryReader(new MemoryStream(bytes, SHA256.HashSizeInBytes, bytes.Length - SHA256.HashSizeInBytes));
        var nodes = new MappingNode[reader.Read7BitEncodedInt()];
        var nodeReader = new NodeReader(reader, places);
        for (var i = 0; i < nodes.Length; i++)
            nodes[i] = nodeReader.ReadFile();
        return (nodes, bytes.AsMemory(SHA256.HashSizeInBytes + (int)reader.BaseStream.Position));
    }

    /// <summary>Hash of the content, of the files that it was read from and of the program that read them.</summary>
    private static byte[] Key(string revision, ReadOnlySpan<byte> content)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(typeof(Snapshot).Module.ModuleVersionId.ToByteArray());
        hash.AppendData(System.Text.Encoding.UTF8.GetBytes(revision));
        hash.AppendData(content);
        return hash.GetHashAndReset();
    }
}
