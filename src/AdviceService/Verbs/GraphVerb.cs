using System.CommandLine;
using Advice.Knowledge;
using Advice.Rules.Bench;

namespace AdviceService.Verbs;

/// <summary>The verb "rules graph": a system's faults and signs as DOT.</summary>
internal static class GraphVerb
{
    public static Command Command(Option<string> rules)
    {
        var system = new Argument<string>("SYSTEM") { Description = "Id of a system" };
        var graph = new Command("graph", "Write the faults and signs of a system as a graph in DOT") { system };
        graph.SetAction(parsed => Write(parsed.GetValue(rules)!, parsed.GetValue(system)!));
        return graph;
    }

    private static int Write(string folder, string system)
    {
        if (RuleFolder.Load(folder)?.Catalogue is not { } catalogue)
            return 1;
        var systems = catalogue.Systems.Select(one => one.Id).ToList();
        if (!systems.Contains(system))
        {
            Console.Error.WriteLine($"There is no system '{system}'; there are {string.Join(", ", systems)}{(NearestWord.To(system, systems) is { } near ? $"; did you mean '{near}'?" : ".")}");
            return 1;
        }

        foreach (var line in new SystemGraph(catalogue).Of(system))
            Console.WriteLine(line);
        return 0;
    }
}
