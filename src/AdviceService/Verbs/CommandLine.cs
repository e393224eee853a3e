using System.CommandLine;

namespace AdviceService.Verbs;

/// <summary>The verbs of the executable.</summary>
internal static class CommandLine
{
    /// <summary>Folder of the rule files; without it those beside the binary.</summary>
    public static Option<string> Rules() => new("--rules")
    {
        Description = "Folder of the rule files",
        DefaultValueFactory = _ => Path.Combine(AppContext.BaseDirectory, "rules"),
        Recursive = true,
    };

    /// <summary>The command line as a whole.</summary>
    public static RootCommand Root()
    {
        var rules = Rules();
        return new RootCommand("Vehicle-maintenance advice") { rules, RulesVerb.Command(rules) };
    }
}
