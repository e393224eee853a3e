using System.CommandLine;
using Advice.Knowledge.Words;
using Advice.Rules.Bench;

namespace AdviceService.Verbs;

/// <summary>The verb "rules graph": a system's faults and signs as DOT or SVG.</summary>
internal static class GraphVerb
{
    public static Command Command(RuleOptions rules)
    {
        var system = new Argument<string>("SYSTEM") { Description = "Id of a system" };
        var format = new Option<string>("--format") { Description = "dot, or svg: a picture with the checks besides", DefaultValueFactory = _ => "dot" }.AcceptOnlyFromAmong("dot", "svg");
        var graph = new Command("graph", "Write the faults and signs of a system as a graph in DOT or a picture in SVG") { system, format };
        graph.SetAction(parsed => Write(rules.ForAuthor(parsed), parsed.GetValue(system)!, parsed.GetValue(format) == "svg"));
        return graph;
    }

    private static int Write(RuleFolders folders, string system, bool drawn)
    {
        if (RuleFolder.Load(folders)?.Catalogue is not { } catalogue)
            return 1;
        var systems = catalogue.Systems.Select(one => one.Id).ToList();
        if (!systems.Contains(system))
        {
            Console.Error.WriteLine($"There is no system '{system}'; there are {string.Join(", ", systems)}{(NearestWord.To(system, systems) is { } near ? $"; did you mean '{near}'?" : ".")}");
            return 1;
        }

        foreach (var line in drawn ? new SystemDrawing(catalogue).Of(system) : new SystemGraph(catalogue).Of(system))
            Console.WriteLine(line);
        return 0;
    }
}
