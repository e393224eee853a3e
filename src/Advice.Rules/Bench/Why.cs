using System.Globalization;
using Advice.Knowledge;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;
using Advice.Rules.Cases;
using Advice.Steps;
using Advice.Suspects;

namespace Advice.Rules.Bench;

/// <summary>How a case came to its answer: facts, rules, suspects, steps, with the numbers that made their order.</summary>
public sealed class Why(Catalogue catalogue, RuleCase @case, Advised advised)
{
    private const int MostLines = 10;
    private const int MostOfAStep = 3;

    /// <summary>The chain from facts to steps.</summary>
    public IEnumerable<string> Lines() => Facts().Concat(Applied()).Concat(Suspects()).Concat(Steps());

    /// <summary>The facts of the case as they were understood.</summary>
    public IEnumerable<string> Facts()
    {
        var place = @case.Place;
        yield return $"case {@case.Id}, {place.File}({place.Line},{place.Column})";
        var vehicle = advised.Case.Vehicle;
        var facts = vehicle.Words.Select(word => $"{word.Key} {word.Value}")
            .Concat(vehicle.Numbers.Select(number => $"{number.Key} {Wording.Number(number.Value)}")).Order(StringComparer.Ordinal);
        yield return $"  vehicle: {string.Join(", ", facts.DefaultIfEmpty("nothing is known"))}";
        foreach (var report in advised.Case.Reports)
        {
            var seen = new Evidence.SeenSign(Sign.Symptom(report.Symptom), report.Occasions, report.Position, report.Present);
            yield return $"  reported: {Wording.Name(seen)}{(report.Words is null ? "" : $", read from \"{report.Words}\" {Wording.Number(report.Confidence)}")}";
        }

        foreach (var code in advised.Case.Codes)
            yield return $"  trouble code: {code}";
        foreach (var outcome in advised.Case.Outcomes)
            yield return $"  found: {outcome.Check} {outcome.Value ?? "normal"}{(outcome.Position is null ? "" : $" ({outcome.Position})")}";
    }

    private IEnumerable<string> Applied()
    {
        yield return "rules that applied";
        foreach (var implied in advised.Evidence.Implied)
            yield return $"  {Wording.WithReason(implied.Rule)}";
        foreach (var normal in advised.Evidence.Normals)
            yield return $"  {Wording.WithReason(normal.Rule)}";
        foreach (var rule in advised.Driving.Concat<Rule>(advised.Cautions))
            yield return $"  {Wording.WithReason(rule)}";
        yield return $"  {advised.Evidence.Links.Count} links to {advised.Suspicion.All.Select(one => one.Instance.Fault.Id).Distinct().Count()} faults, {advised.Evidence.Factors.Count} factors on their odds";
    }

    private IEnumerable<string> Suspects()
    {
        yield return "suspects: probability, raised above the prior, × harm = weight";
        foreach (var suspect in advised.Suspicion.Raised.Take(MostLines))
        {
            yield return $"  {Fixed(suspect.Probability)}  {Name(suspect)}: ({Fixed(suspect.Probability)} − {Fixed(suspect.Instance.Prior)}) × {Wording.Number(suspect.Instance.Fault.Consequence.Harm)} = {Fixed(suspect.Weight)}";
            foreach (var link in suspect.Instance.Links.OrderByDescending(link => link.Strength))
                yield return $"          {Wording.Name(link.Seen)} {Fixed(link.Strength)}  [{link.Rule}]";
        }

        if (advised.Suspicion.Raised.Count > MostLines)
            yield return $"  and {advised.Suspicion.Raised.Count - MostLines} more";
    }

    private IEnumerable<string> Steps()
    {
        yield return "steps: harm found in minutes, set-up and all; of each suspect the weight that the steps before left × how surely the check shows it";
        var left = new HarmLeft(catalogue, advised);
        foreach (var (rank, step) in advised.Steps.Index())
        {
            yield return $"  {rank + 1}  {step.Check.Id}: {Key(step)}";
            var found = left.FoundBy(step.Check).OrderByDescending(one => Math.Round(one.Left * one.Surely, 9)).ToList();
            foreach (var one in found.Take(MostOfAStep))
                yield return $"          {Fixed(one.Left)} × {Wording.Number(one.Surely)} = {Fixed(one.Left * one.Surely)}  {Name(one.Suspect)}";
            if (found.Count > MostOfAStep)
                yield return $"          and {found.Count - MostOfAStep} more: {Fixed(found.Skip(MostOfAStep).Sum(one => one.Left * one.Surely))}";
            left.Take(step.Check);
        }

        if (advised.LeftOut.Value.Count > 0)
            yield return $"  and {advised.LeftOut.Value.Count} more than the case asks or has time for";
        if (advised.Steps.Count == 0)
            yield return advised.Suspicion.Raised.Count == 0 ? "  none, for nothing is suspected" : $"  none of the checks in {catalogue.Checks.Count} that finds a suspect may be advised here";
    }

    /// <summary>The key of a step in the ranking.</summary>
    internal static string Key(Step step)
    {
        var setUps = step.Check.Needs.Sum(need => need.Minutes);
        return $"{Fixed(step.Ranked.HarmFound)} in {step.Check.Minutes} + {setUps} min = {Fixed(step.Ranked.HarmPerMinute)} per min{(step.Ranked.Lifted ? ", lifted for safety" : "")}";
    }

    internal static string Name(Suspect suspect) => $"{suspect.Instance.Fault.Id}{(suspect.Instance.Place is null ? "" : $" ({suspect.Instance.Place})")}";

    internal static string Fixed(double number) => number.ToString("0.0000", CultureInfo.InvariantCulture);
}
