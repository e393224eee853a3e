using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Rules;

namespace Advice.Rules.Checking.Doubts;

/// <summary>Faults that only a check finds which is not advised when it is needed.</summary>
internal sealed class FaultPaths(Tables tables, Problems doubts)
{
    private readonly Existence _existence = new(tables);

    private readonly ILookup<string, Check> _checks = tables.Checks.Bound
        .SelectMany(check => check.Detects.Select(detects => detects.Fault).Distinct(), (check, fault) => (check, fault))
        .ToLookup(pair => pair.fault, pair => pair.check);

    private readonly HashSet<string> _stopping = [.. tables.Rules.Bound.OfType<DrivingRule>()
        .Where(rule => rule is { Advice: DrivingAdvice.Stop, Symptoms.Count: 1, Occasions.Count: 0, Without.Count: 0, When.Tests.Count: 0 }).Select(rule => rule.Symptoms[0])];

    /// <summary>Checks every fault, and what every check detects.</summary>
    public void Check()
    {
        foreach (var fault in tables.Faults.Bound)
        {
            OtherVehicles(fault);
            OnTheRoad(fault);
            if (_checks[fault.Id].All(check => check.ReadsCodes))
                doubts.Add(WarningCode.OnlyByCodes, tables.Faults.PlaceOf(fault.Id), $"only reading trouble codes finds '{fault.Id}', which is not advised to a caller who gives a code");
        }

        foreach (var check in tables.Checks.Bound)
        {
            foreach (var detects in check.Detects.DistinctBy(detects => detects.Fault))
            {
                if (Conditions.Clash(_existence.OfFault(detects.Fault).Concat(_existence.OfCheck(check.Id))) is { } fact)
                    doubts.Add(WarningCode.CannotFind, tables.Checks.PlaceOf(check.Id), $"'{check.Id}' cannot find '{detects.Fault}': no vehicle has both, by its '{fact}'");
            }
        }
    }

    private void OtherVehicles(Fault fault)
    {
        var (fits, checks) = (_existence.OfFault(fault.Id).ToList(), _checks[fault.Id].Select(check => _existence.OfCheck(check.Id).ToList()).ToList());
        var facts = checks.SelectMany(tests => tests).Select(test => test.Fact).Where(fact => fact.Kind != FactKind.Number).DistinctBy(fact => fact.Id);
        foreach (var fact in facts)
        {
            var missed = fact.Values.Keys.Where(value => Admits(fits, fact.Id, value) && !checks.Exists(tests => Admits(tests, fact.Id, value))).ToList();
            if (missed.Count > 0)
                doubts.Add(WarningCode.NotFoundEverywhere, tables.Faults.PlaceOf(fault.Id), $"no check finds '{fault.Id}' on vehicles with '{fact.Id}' {string.Join(" or ", missed)}, which can have it");
        }
    }

    private static bool Admits(IEnumerable<FactTest> tests, string fact, string value) =>
        tests.All(test => test.Fact.Id != fact || test.Words.Contains(value));

    private void OnTheRoad(Fault fault)
    {
        if (!_checks[fault.Id].All(check => check.Needs.Any(need => need.Drives)))
            return;
        var rules = tables.Rules.Bound;
        var stops = rules.OfType<DrivingRule>().FirstOrDefault(rule => rule.Fault == fault.Id && rule.Advice == DrivingAdvice.Stop)?.Id;
        var shown = rules.OfType<ShowsRule>().Where(rule => rule.Fault == fault.Id).ToList();
        if (stops is null && shown.TrueForAll(rule => _stopping.Contains(rule.Sign.Id)))
            stops = shown.FirstOrDefault()?.Sign.Id;
        if (stops is not null)
            doubts.Add(WarningCode.OnlyByDriving, tables.Faults.PlaceOf(fault.Id), $"only a check on the road finds '{fault.Id}', but by '{stops}' the vehicle may not be driven then");
    }
}
