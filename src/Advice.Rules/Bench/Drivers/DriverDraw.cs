using Advice.Evidence;
using Advice.Inspections;
using Advice.Knowledge;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;
using Advice.Suspects;
using Advice.Symptoms;

namespace Advice.Rules.Bench.Drivers;

/// <summary>Draws drivers from the rules: a fault by how probable it is on the vehicle, what it shows by how often it does, and what is
/// noticed without it by how often that is. The driver reports one of what the fault shows.</summary>
public sealed class DriverDraw
{
    private const double UnsureShare = 0.1;

    private readonly Catalogue _catalogue;
    private readonly ILookup<string, ShowsRule> _shows;
    private readonly IReadOnlyList<string> _symptoms;
    private readonly IReadOnlyList<(Case Case, IReadOnlyList<Suspect> Faults)> _vehicles;

    /// <summary>Draws from these vehicles in turn.</summary>
    public DriverDraw(IRuleBook rules, IEnumerable<Case> vehicles)
    {
        ArgumentNullException.ThrowIfNull(rules);
        _catalogue = rules.Catalogue;
        _shows = _catalogue.Rules.Values.OfType<ShowsRule>().Where(rule => rule.Sign.Kind == SignKind.Symptom)
            .OrderBy(rule => rule.Id, StringComparer.Ordinal).ToLookup(rule => rule.Fault);
        _symptoms = [.. _catalogue.Symptoms.Keys.Order(StringComparer.Ordinal)];
        var (assessment, expected) = (new Assessment(rules), new ExpectedFaults(_catalogue));
        _vehicles =
        [
            .. vehicles.Select(vehicle => (vehicle, assessment.Of(vehicle)))
                .Select(one => (one.vehicle, expected.On(one.vehicle, one.Item2.Evidence with { Factors = expected.Factors(one.vehicle) }, one.Item2.Suspicion))),
        ];
    }

    /// <summary>As many drivers as asked for; the same for the same seed.</summary>
    public IEnumerable<Driver> Draw(int count, int seed)
    {
        var random = new Random(seed);
        for (var drawn = 0; drawn < count;)
        {
            var (vehicle, faults) = _vehicles[drawn % _vehicles.Count];
            // A fault that shows nothing brings nobody to ask.
            if (Drive(vehicle, Pick(faults, random).Instance.Fault.Id, random) is { } driver)
            {
                drawn++;
                yield return driver;
            }
        }
    }

    private Driver? Drive(Case vehicle, string fault, Random random)
    {
        var shown = _shows[fault].Where(rule => rule.When.Test(vehicle.Vehicle) != Truth.No && random.NextDouble() < rule.Often * rule.When.Share(vehicle.Vehicle)).ToList();
        if (shown.Count == 0)
            return null;
        var reported = shown[random.Next(shown.Count)];
        IReadOnlyList<string> occasions = reported.Occasions.Count == 0 ? [] : [reported.Occasions[random.Next(reported.Occasions.Count)]];
        var noticed = shown.Select(rule => rule.Sign.Id).Concat(_symptoms.Where(symptom => random.NextDouble() < _catalogue.Leaks[Sign.Symptom(symptom)])).ToHashSet();
        var unsure = _symptoms.Where(_ => random.NextDouble() < UnsureShare).ToHashSet();
        return new Driver(vehicle with { Reports = [new Report(reported.Sign.Id, occasions, null, true)] }, fault, noticed, unsure);
    }

    private static Suspect Pick(IReadOnlyList<Suspect> faults, Random random)
    {
        var left = random.NextDouble() * faults.Sum(suspect => suspect.Probability);
        foreach (var suspect in faults)
        {
            left -= suspect.Probability;
            if (left < 0)
                return suspect;
        }

        return faults[^1];
    }
}
