using Advice.Rules.Bench;
using Advice.Rules.RuleSets;

namespace Advice.Rules.Tests.Bench;

public class SystemGraphTests
{
    [Fact]
    public void Of_SharedWords_IsOneFaultOneSymptomAndTheirEdge() => Assert.Equal(
        [
            "digraph \"brakes\" {",
            "  rankdir=LR; node [fontname=\"sans-serif\", fontsize=10]; edge [fontname=\"sans-serif\", fontsize=8];",
            "  \"fault:pads-worn\" [label=\"pads worn\", shape=box, style=filled, fillcolor=\"gray70\"];",
            "  \"Symptom:squeal\" [label=\"squeal\", shape=ellipse];",
            "  \"fault:pads-worn\" -> \"Symptom:squeal\" [penwidth=2.5, label=\"usually 0.8\", tooltip=\"pads-worn shows squeal usually 0.8  [pads-squeal] It rubs. (our estimate)\"];",
            "}",
        ],
        new SystemGraph(WrittenRules.Beside(null, null, RuleSetLoader.Load).Catalogue).Of("brakes"));

    [Fact]
    public void Of_EverySystem_EachEdgeJoinsNodesOfTheGraph()
    {
        var catalogue = RepositoryRules.Book.Catalogue;
        foreach (var system in catalogue.Systems)
        {
            var lines = new SystemGraph(catalogue).Of(system.Id).ToList();
            var nodes = lines.Where(line => line.Contains("shape=", StringComparison.Ordinal)).Select(line => line.Split('"')[1]).ToHashSet();
            var ends = lines.Where(line => line.Contains("\" -> \"", StringComparison.Ordinal)).SelectMany(line => new[] { line.Split('"')[1], line.Split('"')[3] });
            Assert.All(ends, end => Assert.Contains(end, nodes));
        }
    }
}
