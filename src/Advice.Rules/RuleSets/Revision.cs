using System.Security.Cryptography;
using System.Text;
using Advice.Rules.Files;

namespace Advice.Rules.RuleSets;

/// <summary>The hash by which a rule set or overlay is known.</summary>
internal static class Revision
{
    /// <summary>The hash of files, and of what is laid over them.</summary>
    public static string Of(IEnumerable<RuleFile> files, params IReadOnlyList<string> overlays)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var file in files)
        {
            // Lengths keep a text from wandering between a path and a content.
            hash.AppendData(Encoding.UTF8.GetBytes($"{file.Path}\n{file.Content.Length}\n"));
            hash.AppendData(file.Content.Span);
        }

        foreach (var overlay in overlays)
            hash.AppendData(Encoding.UTF8.GetBytes($"{overlay}\n"));
        return $"sha256:{Convert.ToHexStringLower(hash.GetHashAndReset())}";
    }
}
