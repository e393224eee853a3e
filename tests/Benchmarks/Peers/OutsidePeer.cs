using System.Diagnostics;
using System.Globalization;
using System.Text.Json;

namespace Benchmarks.Peers;

/// <summary>A peer that runs as a process of its own, under node.</summary>
internal static class OutsidePeer
{
    private static readonly JsonSerializerOptions Json = new() { PropertyNamingPolicy = JsonNamingPolicy.CamelCase };

    /// <summary>CPU time per request, µs, after it found the same; null where node or the package is not there, or it found something else.</summary>
    public static double? Time(string name, IReadOnlyList<FlatRule> rules, IReadOnlyList<FlatRequest> requests)
    {
        var folder = Directory.CreateTempSubdirectory("peer-");
        try
        {
            File.WriteAllText(Path.Combine(folder.FullName, "rules.json"), JsonSerializer.Serialize(rules, Json));
            File.WriteAllText(Path.Combine(folder.FullName, "requests.json"), JsonSerializer.Serialize(requests, Json));
            var start = new ProcessStartInfo("node", [Script, name, folder.FullName, $"{requests.Count}"]) { RedirectStandardOutput = true };
            using var node = Process.Start(start)!;
            var output = node.StandardOutput.ReadToEnd();
            node.WaitForExit();
            return node.ExitCode == 0 ? double.Parse(output, CultureInfo.InvariantCulture) : null;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return null;
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    // Beside the project, where `npm install` puts the packages.
    private static string Script => Path.Combine(Corpus.Folder, "../tests/Benchmarks/Peers/peer.mjs");
}
