using Advice.Knowledge;
using Advice.Vehicles;

namespace Advice.Answers;

/// <summary>What was assumed for want of a fact.</summary>
internal sealed class AssumptionWriter(Catalogue catalogue)
{
    /// <summary>One sentence for each assumption.</summary>
    public IReadOnlyList<string> Write(Advised advised) => [.. Sentences(advised)];

    private IEnumerable<string> Sentences(Advised advised)
    {
        var (@case, vehicle) = (advised.Case, advised.Case.Vehicle);
        if (vehicle.Number(Vehicle.AgeYears) is null)
            yield return "The model year is not stated: base rates are those of a vehicle ten years old.";
        if (vehicle.Number(Vehicle.OdometerKm) is null)
            yield return "The distance is not stated: base rates are those of a vehicle with 150,000 km.";
        foreach (var fact in OpenFacts(advised))
            yield return $"We do not know {fact.Name}: what only some vehicles have counts by how common it is, and carries the condition.";
        if (@case.Jurisdiction is null && (@case.Outcomes.Count > 0 || advised.Steps.Any(step => catalogue.LimitsByCheck[step.Check.Id].Any(limit => limit.Jurisdiction is not null))))
            yield return "No jurisdiction is stated: the limits of all that are known are shown, and the strictest decides.";
        if (advised.Suspicion.LeftOut.Count > 0)
            yield return $"Only the twelve most telling signs count; left out: {string.Join(", ", advised.Suspicion.LeftOut)}.";
    }

    /// <summary>The facts that decide whether something in this answer exists on this vehicle.</summary>
    private IEnumerable<VehicleFact> OpenFacts(Advised advised) =>
        advised.Steps.SelectMany(step => catalogue.FitsByCheck[step.Check.Id])
            .Concat(advised.Steps.SelectMany(step => step.Suspects).SelectMany(suspect => catalogue.FitsByFault[suspect.Instance.Fault.Id]))
            .Where(rule => VehicleFit.IsOpen(rule, advised.Case.Vehicle)).SelectMany(rule => rule.When.Tests).Where(test => test.Test(advised.Case.Vehicle) == Truth.Unknown)
            .Select(test => test.Fact).DistinctBy(fact => fact.Id).OrderBy(fact => fact.Id, StringComparer.Ordinal);
}
