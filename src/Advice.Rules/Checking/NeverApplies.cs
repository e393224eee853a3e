using Advice.Knowledge.Conditions;
using Advice.Knowledge.Rules;
using Advice.Rules.Files;

namespace Advice.Rules.Checking;

/// <summary>Entries that no vehicle can bring into play, because their condition contradicts what 'fits' rules ask for.</summary>
internal sealed class NeverApplies(Tables tables, Problems problems)
{
    private readonly Existence _existence = new(tables);

    /// <summary>Checks all conditions on the vehicle.</summary>
    public void Check()
    {
        foreach (var fault in tables.Faults.Bound)
            Exists(tables.Faults, fault.Id, _existence.OfFault(fault.Id));
        foreach (var check in tables.Checks.Bound)
            Exists(tables.Checks, check.Id, _existence.OfCheck(check.Id));
        foreach (var service in tables.Services.Bound)
        {
            Exists(tables.Services, service.Id, _existence.OfService(service.Id));
            foreach (var interval in service.Intervals)
                Meets(tables.Services.PlaceOf(service.Id), $"an interval of '{service.Id}'", service.Id, interval.When.Tests.Concat(_existence.OfService(service.Id)));
        }

        foreach (var limit in tables.Limits.Bound)
            Meets(tables.Limits.PlaceOf(limit.Id), $"the limit '{limit.Id}'", limit.Check, limit.When.Tests.Concat(_existence.OfCheck(limit.Check)));
        foreach (var rule in tables.Rules.Bound)
            Rule(rule);
        Finding();
    }

    private void Rule(Rule rule)
    {
        foreach (var fault in Faults(rule))
            Meets(tables.Rules.PlaceOf(rule.Id), $"the rule '{rule.Id}'", fault, rule.When.Tests.Concat(_existence.OfFault(fault)));
        if (rule is not WarnsRule warns || !tables.Cautions.TryGet(warns.Caution, out var caution))
            return;
        foreach (var check in warns.Checks)
            Meets(tables.Rules.PlaceOf(rule.Id), $"the rule '{rule.Id}'", check, rule.When.Tests.Concat(_existence.OfCheck(check)));
        Meets(tables.Rules.PlaceOf(rule.Id), $"the rule '{rule.Id}'", caution.Id, rule.When.Tests.Concat(caution.When.Tests));
    }

    private static IEnumerable<string> Faults(Rule rule) => rule switch
    {
        ShowsRule shows => [shows.Fault],
        ProneRule prone => prone.Faults,
        DrivingRule { Fault: { } fault } => [fault],
        WarnsRule { Fault: { } fault } => [fault],
        _ => [],
    };

    private void Finding()
    {
        var checks = tables.Checks.Bound.SelectMany(check => check.Detects, (check, detects) => (check, detects.Fault)).Distinct().ToLookup(one => one.Fault, one => one.check);
        foreach (var fault in tables.Faults.Bound.Where(fault => checks[fault.Id].Any()))
        {
            if (checks[fault.Id].All(check => Conditions.Clash(_existence.OfFault(fault.Id).Concat(_existence.OfCheck(check.Id))) is not null))
                problems.Add(ErrorCode.FaultNotFound, tables.Faults.PlaceOf(fault.Id), $"no vehicle has both the fault '{fault.Id}' and a check that detects it: {string.Join(", ", checks[fault.Id].Select(check => check.Id))}");
        }
    }

    private void Exists(IDeclaredIds ids, string id, IEnumerable<FactTest> fits)
    {
        if (Conditions.Clash(fits) is { } fact)
            problems.Add(ErrorCode.NeverApplies, ids.PlaceOf(id), $"no vehicle has the {ids.Noun} '{id}': its 'fits' rules contradict each other on '{fact}'");
    }

    private void Meets(Place place, string what, string about, IEnumerable<FactTest> tests)
    {
        if (Conditions.Clash(tests) is { } fact)
            problems.Add(ErrorCode.NeverApplies, place, $"{what} never applies to '{about}': no vehicle meets its '{fact}' and what '{about}' needs");
    }
}
