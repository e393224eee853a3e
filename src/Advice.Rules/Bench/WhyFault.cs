using Advice.Evidence;
using Advice.Inference;
using Advice.Knowledge;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Rules;
using Advice.Suspects;
using Advice.Vehicles;

namespace Advice.Rules.Bench;

/// <summary>How a fault came to its probability in a case, or why no sign speaks for it.</summary>
public sealed class WhyFault(Catalogue catalogue, Advised advised)
{
    /// <summary>The chain from base rate to posterior.</summary>
    public IEnumerable<string> Of(string id)
    {
        var fault = catalogue.Faults[id];
        var instances = advised.Suspicion.All.Index().Where(one => one.Item.Instance.Fault.Id == id).ToList();
        var lines = instances.Count == 0 ? NotTouched(fault) : Prior(fault).Concat(instances.SelectMany(one => Instance(one.Index, one.Item)));
        return lines.Prepend($"fault {id}: {fault.Name.Trade}");
    }

    private IEnumerable<string> Prior(Fault fault)
    {
        var vehicle = advised.Case.Vehicle;
        var odds = fault.Prior / (1 - fault.Prior);
        yield return $"  base rate {Wording.Number(fault.Prior)} ({fault.Source}), as odds {Why.Fixed(odds)}";
        var ageing = fault.Ageing.Factor(vehicle.Number(Vehicle.OdometerKm), vehicle.Number(Vehicle.AgeYears));
        yield return $"    × {Wording.Number(ageing)}  ageing {fault.Ageing.Id}";
        odds *= ageing;
        foreach (var factor in advised.Evidence.Factors.Where(factor => factor.Fault == fault.Id))
        {
            yield return $"    × {Wording.Number(factor.Rule.Odds)}  {Wording.WithReason(factor.Rule)}";
            odds *= factor.Rule.Odds;
        }

        var share = VehicleFit.Share(catalogue.FitsByFault[fault.Id], vehicle);
        var can = share < 1 ? $", of which {Wording.Number(share)} of such vehicles can have it" : "";
        var named = advised.Case.Named.Most > 0 ? $", × {Why.Fixed(advised.Case.Named.Factor(fault.System))} for what the text says of systems" : "";
        yield return $"    = {Why.Fixed(odds)}, as a probability {Why.Fixed(odds / (1 + odds))}{can}{named}";
    }

    private IEnumerable<string> Instance(int cause, Suspect suspect)
    {
        var instance = suspect.Instance;
        var places = instance.Place is null ? "" : $", {instance.Places.Count} of its {instance.Fault.Places.Count} places";
        yield return $"  prior of {Why.Name(suspect)} {Why.Fixed(instance.Prior)}{places}";
        var network = advised.Suspicion.Network;
        foreach (var sign in network.Manifestations.Where(sign => sign.Links.Any(link => link.Cause == cause)))
        {
            var strength = sign.Links.Where(link => link.Cause == cause).Max(link => link.Strength);
            yield return $"  {Sign(sign)}: shown by it {Why.Fixed(strength)}, by none of the listed {Why.Fixed(sign.Leak)}; without this sign it would be {Why.Fixed(Without(sign, cause))}";
            foreach (var link in instance.Links.Where(link => link.Seen.ToString() == sign.Id))
                yield return $"      {Why.Fixed(link.Strength)}  [{link.Rule}] {link.Because.Trade}{(link.Source is null ? "" : $" ({link.Source})")}";
            var others = sign.Links.Where(link => link.Cause != cause).DistinctBy(link => link.Cause)
                .OrderByDescending(link => network.Priors[link.Cause] * link.Strength).Take(3).ToList();
            if (others.Count > 0)
                yield return $"      shown also by {string.Join(", ", others.Select(link => $"{Why.Name(advised.Suspicion.All[link.Cause])} {Why.Fixed(network.Priors[link.Cause])} × {Wording.Number(link.Strength)}"))}";
        }

        yield return $"  probability {Why.Fixed(suspect.Probability)}; weight ({Why.Fixed(suspect.Probability)} − {Why.Fixed(instance.Prior)}) × harm {Wording.Number(instance.Fault.Consequence.Harm)} = {Why.Fixed(suspect.Weight)}";
        var steps = advised.Steps.Index().Where(one => one.Item.Check.Surely(instance.Fault.Id) > 0)
            .Select(one => $"{one.Index + 1} {one.Item.Check.Id} {Wording.Number(one.Item.Check.Surely(instance.Fault.Id))}");
        yield return $"  found by step {string.Join(", ", steps.DefaultIfEmpty("none"))}";
    }

    private string Sign(Manifestation sign) => advised.Evidence.Links.Select(link => link.Seen).Concat(advised.Evidence.Implied.Select(one => one.From))
        .FirstOrDefault(seen => seen.ToString() == sign.Id) is { } seen ? Wording.Name(seen) : sign.Id;

    private double Without(Manifestation sign, int cause)
    {
        var network = advised.Suspicion.Network;
        return ExactInference.Solve(network with { Manifestations = [.. network.Manifestations.Where(other => other != sign)] }).Probabilities[cause];
    }

    private IEnumerable<string> NotTouched(Fault fault)
    {
        yield return "  no sign of the case speaks for or against it";
        foreach (var fits in catalogue.FitsByFault[fault.Id].Where(fits => fits.When.Test(advised.Case.Vehicle) == Truth.No))
            yield return $"  this vehicle cannot have it: {Wording.WithReason(fits)}";
        foreach (var rule in catalogue.ShowsByFault[fault.Id])
            yield return $"  {Missing(rule)}: {Wording.WithReason(rule)}";
    }

    private string Missing(ShowsRule rule)
    {
        var reports = Signs().Where(seen => seen.Sign == rule.Sign).ToList();
        return reports.Count == 0 ? "not reported"
            : rule.When.Test(advised.Case.Vehicle) == Truth.No ? "another vehicle"
            : rule.Without.FirstOrDefault(symptom => advised.Case.Reports.Any(report => report.Present && report.Symptom == symptom)) is { } other ? $"not with {other}"
            : !reports.Exists(seen => catalogue.OccasionsFit(seen.Occasions, rule.Occasions)) ? "another occasion"
            : "reported, but the fault is excluded";
    }

    private IEnumerable<SeenSign> Signs() => advised.Case.Reports
        .Select(report => new SeenSign(Knowledge.Signs.Sign.Symptom(report.Symptom), report.Occasions, report.Position, report.Present))
        .Concat(advised.Case.Codes.Select(code => new SeenSign(Knowledge.Signs.Sign.Code(code), [], null, true)))
        .Concat(advised.Evidence.Implied.Select(implied => implied.Implied));
}
