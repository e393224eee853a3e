using System.Security.Cryptography;
using System.Text;
using Advice.Rules.Checking;
using Advice.Rules.Files;

namespace Advice.Rules.RuleSets;

/// <summary>Reads, checks and hashes a folder of rule files.</summary>
public static class RuleSetLoader
{
    /// <summary>The rule set of a folder.</summary>
    /// <exception cref="RuleSetException">Something is wrong with it; every error is named.</exception>
    public static RuleBook Load(string directory) => Read(directory, new Tables());

    /// <summary>The rule set of a folder with what its author should look at again.</summary>
    /// <exception cref="RuleSetException">Something is wrong with it; every error is named.</exception>
    public static ReviewedRules Review(string directory)
    {
        var tables = new Tables();
        return new ReviewedRules(Read(directory, tables), Checking.Doubts.Review.Of(tables));
    }

    private static RuleBook Read(string directory, Tables tables)
    {
        var problems = new Problems();
        var files = RuleFolder.Read(directory, problems).Where(file => !file.HoldsCases).ToList();
        if (files.Count == 0 && problems.None)
            problems.Add(ErrorCode.FileNotRead, new Place(directory, 1, 1), "there are no rule files in this folder");
        var nodes = ParsedFiles.Of(files, problems);
        var catalogue = RuleSetBinder.Bind(nodes, tables, problems);
        return catalogue is null || !problems.None
            ? throw new RuleSetException(problems.InOrder)
            : new RuleBook(catalogue, Revision(files));
    }

    private static string Revision(IEnumerable<RuleFile> files)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var file in files)
        {
            // Lengths keep a text from wandering between a path and a content.
            hash.AppendData(Encoding.UTF8.GetBytes($"{file.Path}\n{file.Content.Length}\n"));
            hash.AppendData(file.Content.Span);
        }

        return $"sha256:{Convert.ToHexStringLower(hash.GetHashAndReset())}";
    }
}
