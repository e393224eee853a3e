using Advice.Knowledge;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;

namespace Advice.Rules.Bench;

/// <summary>The faults of a system and what they show, as a graph in the DOT language.</summary>
public sealed class SystemGraph(Catalogue catalogue)
{
    /// <summary>The graph, line by line: faults are boxes, darker the more harm they do; symptoms ellipses; trouble codes notes. An edge
    /// is the wider the more often the fault shows the sign; a dashed one leads from a sign to what it implies.</summary>
    /// <param name="system">Id of the system.</param>
    public IEnumerable<string> Of(string system)
    {
        var faults = catalogue.Faults.Values.Where(fault => fault.System == system).OrderBy(fault => fault.Id, StringComparer.Ordinal).ToList();
        var ids = faults.Select(fault => fault.Id).ToHashSet();
        var shows = catalogue.Rules.Values.OfType<ShowsRule>().Where(rule => ids.Contains(rule.Fault)).OrderBy(rule => rule.Id, StringComparer.Ordinal).ToList();
        var signs = shows.Select(rule => rule.Sign).Distinct().OrderBy(sign => sign.ToString(), StringComparer.Ordinal).ToList();
        var implies = catalogue.Rules.Values.OfType<ImpliesRule>().Where(rule => signs.Contains(rule.Sign) && signs.Contains(rule.Implied))
            .OrderBy(rule => rule.Id, StringComparer.Ordinal);

        yield return $"digraph {Quoted(system)} {{";
        yield return "  rankdir=LR; node [fontname=\"sans-serif\", fontsize=10]; edge [fontname=\"sans-serif\", fontsize=8];";
        foreach (var fault in faults)
            yield return $"  {Node(fault)} [label={Quoted(fault.Name.Trade)}, shape=box, style=filled, fillcolor=\"gray{Shade(fault)}\"];";
        foreach (var sign in signs)
            yield return $"  {Node(sign)} [label={Quoted(Label(sign))}, shape={(sign.Kind == SignKind.Code ? "note" : "ellipse")}];";
        foreach (var rule in shows)
            yield return $"  {Node(catalogue.Faults[rule.Fault])} -> {Node(rule.Sign)} [penwidth={Wording.Number(0.5 + (2.5 * rule.Often))}, label={Quoted(Wording.Often(rule.Often))}, tooltip={Quoted(Wording.WithReason(rule))}];";
        foreach (var rule in implies)
            yield return $"  {Node(rule.Sign)} -> {Node(rule.Implied)} [style=dashed, tooltip={Quoted(Wording.WithReason(rule))}];";
        yield return "}";
    }

    private string Label(Sign sign) => sign.Kind == SignKind.Code ? $"{sign.Id} {catalogue.Codes[sign.Id].Meaning.Trade}" : catalogue.Symptoms[sign.Id].Name.Trade;

    // From gray95 for a nuisance down to gray70 for the worst.
    private int Shade(Fault fault) => 95 - (int)(25 * fault.Consequence.Harm / catalogue.Faults.Values.Max(other => other.Consequence.Harm));

    private static string Node(Fault fault) => Quoted($"fault:{fault.Id}");

    private static string Node(Sign sign) => Quoted(sign.ToString());

    private static string Quoted(string text) => $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";
}
