using Advice.Knowledge;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Words;
using Advice.Vehicles;

namespace Advice.Answers;

/// <summary>What was assumed for want of a fact.</summary>
internal sealed class AssumptionWriter(Catalogue catalogue)
{
    /// <summary>One sentence for each assumption.</summary>
    public IReadOnlyList<string> Write(Advised advised) => [.. Assumed(advised).Select(one => catalogue.Say(advised.Case.Workshop.Reader, one))];

    private IEnumerable<Saying> Assumed(Advised advised)
    {
        var (@case, vehicle) = (advised.Case, advised.Case.Vehicle);
        if (@case.SeveralVehicles)
            yield return new(Sentences.SeveralVehicles);
        if (vehicle.Number(Vehicle.AgeYears) is null)
            yield return new(Sentences.ModelYearNotStated);
        if (vehicle.Number(Vehicle.OdometerKm) is null)
            yield return new(Sentences.DistanceNotStated);
        foreach (var fact in OpenFacts(advised))
            yield return new(Sentences.FactNotKnown, fact.Name);
        if (@case.Jurisdiction is null && (@case.Outcomes.Count > 0 || advised.Steps.Any(step => catalogue.LimitsByCheck[step.Check.Id].Any(limit => limit.Jurisdiction is not null))))
            yield return new(Sentences.JurisdictionNotStated);
        if (advised.Suspicion.LeftOut.Count > 0)
            yield return new(Sentences.SignsLeftOut, string.Join(", ", advised.Suspicion.LeftOut));
    }

    /// <summary>The facts that decide whether something in this answer exists on this vehicle.</summary>
    private IEnumerable<VehicleFact> OpenFacts(Advised advised) =>
        advised.Steps.SelectMany(step => catalogue.FitsByCheck[step.Check.Id])
            .Concat(advised.Steps.SelectMany(step => step.Suspects).SelectMany(suspect => catalogue.FitsByFault[suspect.Instance.Fault.Id]))
            .Where(rule => VehicleFit.IsOpen(rule, advised.Case.Vehicle)).SelectMany(rule => rule.When.Tests).Where(test => test.Test(advised.Case.Vehicle) == Truth.Unknown)
            .Select(test => test.Fact).DistinctBy(fact => fact.Id).OrderBy(fact => fact.Id, StringComparer.Ordinal);
}
