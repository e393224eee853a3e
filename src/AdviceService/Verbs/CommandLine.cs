using System.CommandLine;

namespace AdviceService.Verbs;

/// <summary>The verbs of the executable.</summary>
internal static class CommandLine
{
    /// <summary>Runs the command line and gives the exit code.</summary>
    public static Task<int> RunAsync(string[] args) =>
        // The web host ends on signals by itself and needs the time that it takes.
        Root().Parse(args).InvokeAsync(new InvocationConfiguration { ProcessTerminationTimeout = null });

    /// <summary>No verb = serve.</summary>
    private static RootCommand Root()
    {
        var rules = new Option<string>("--rules")
        {
            Description = "Folder of the rule files; without it those beside the binary",
            DefaultValueFactory = _ => Path.Combine(AppContext.BaseDirectory, "rules"),
            Recursive = true,
        };
        var root = new RootCommand("Vehicle-maintenance advice")
        {
            rules, ServeVerb.Command(rules), AdviseVerb.Command(rules), ScoreVerb.Command(rules), WorkVerb.Command(rules), SubmitVerb.Command(), CollectVerb.Command(rules), RulesVerb.Command(rules),
        };
        root.TreatUnmatchedTokensAsErrors = false;
        root.SetAction((parsed, _) => ServeVerb.RunAsync(parsed, rules));
        return root;
    }
}
