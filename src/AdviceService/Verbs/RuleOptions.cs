using System.CommandLine;

namespace AdviceService.Verbs;

/// <summary>The options that say which rules a verb works with.</summary>
internal sealed class RuleOptions
{
    /// <summary>Names the overlays where the command line names none, as a container is told.</summary>
    public const string Variable = "ADVICE_OVERLAYS";

    private const string Folder = "rules";

    /// <summary>Folder of the rules.</summary>
    public Option<string?> Rules { get; } = new("--rules")
    {
        Description = $"Folder of the rule files; without it those beside the binary, but for the verbs of 'rules' the folder '{Folder}' where you are, if there is one",
        Recursive = true,
    };

    /// <summary>Folders of overlays.</summary>
    public Option<string[]> Overlays { get; } = new("--overlay")
    {
        Description = $"Folder of rules of your own over these; may be given several times, later ones lie above; without it those of {Variable}",
        DefaultValueFactory = _ => Environment.GetEnvironmentVariable(Variable)?.Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries) ?? [],
        Recursive = true,
    };

    /// <summary>The folders that were named, to advise with.</summary>
    public RuleFolders Of(ParseResult parsed) => new(parsed.GetValue(Rules) ?? Path.Combine(AppContext.BaseDirectory, Folder), parsed.GetValue(Overlays)!);

    /// <summary>The folders that were named, to work on: who stands beside rules means those, and not the copy beside the binary.</summary>
    public RuleFolders ForAuthor(ParseResult parsed) =>
        parsed.GetValue(Rules) is null && Directory.Exists(Folder) ? new(Folder, parsed.GetValue(Overlays)!) : Of(parsed);
}
