using Advice.Evidence;
using Advice.Knowledge.Rules;
using Advice.Rules.Checking;
using Advice.Rules.RuleSets;

namespace Benchmarks;

/// <summary>The rule set three times over: for each fault two more that show the same signs by rules of their own, are found by the same
/// checks and need the same vehicles. Each case then meets three times the rules; faults are a tenth as frequent as the first.</summary>
internal static class TripledRules
{
    private static readonly string[] Endings = ["", "-second", "-third"];

    public static RuleBook Of(IRuleBook rules)
    {
        var known = rules.Catalogue;
        var faults = known.Faults.Values.SelectMany(fault => Endings, (fault, ending) => ending == "" ? fault : fault with { Id = fault.Id + ending, Prior = fault.Prior / 10 })
            .ToDictionary(fault => fault.Id);
        var checks = known.Checks.Values.Select(check => check with { Detects = [.. check.Detects.SelectMany(_ => Endings, (one, ending) => one with { Fault = one.Fault + ending })] })
            .OrderBy(check => check.Id, StringComparer.Ordinal).ToList();
        var triple = known.Rules.Values.SelectMany(_ => Endings, Again).ToDictionary(rule => rule.Id);
        var fits = triple.Values.OfType<FitsRule>().OrderBy(rule => rule.Id, StringComparer.Ordinal).ToList();
        var shows = triple.Values.OfType<ShowsRule>().OrderBy(rule => rule.Id, StringComparer.Ordinal).ToList();
        return new RuleBook(
            known with
            {
                Faults = System.Collections.Frozen.FrozenDictionary.ToFrozenDictionary(faults),
                Checks = System.Collections.Frozen.FrozenDictionary.ToFrozenDictionary(checks, check => check.Id),
                Rules = System.Collections.Frozen.FrozenDictionary.ToFrozenDictionary(triple),
                ChecksByFault = checks.SelectMany(check => check.Detects.Select(one => one.Fault).Distinct(), (check, fault) => (check, fault)).ToLookup(one => one.fault, one => one.check),
                FitsByFault = fits.SelectMany(rule => rule.Faults, (rule, fault) => (rule, fault)).ToLookup(one => one.fault, one => one.rule),
                ShowsBySign = shows.ToLookup(rule => rule.Sign),
                ShowsByFault = RuleSetBinder.MostOftenFirst(shows),
            },
            rules.Revision, []);
    }

    private static Rule Again(Rule rule, string ending) => ending == "" ? rule : rule switch
    {
        ShowsRule shows => shows with { Id = rule.Id + ending, Fault = shows.Fault + ending },
        ProneRule prone => prone with { Id = rule.Id + ending, Faults = [.. prone.Faults.Select(fault => fault + ending)] },
        FitsRule fits => fits with { Id = rule.Id + ending, Faults = [.. fits.Faults.Select(fault => fault + ending)], Checks = [], Services = [] },
        WarnsRule { Fault: { } fault } warns => warns with { Id = rule.Id + ending, Fault = fault + ending },
        DrivingRule { Fault: { } fault } driving => driving with { Id = rule.Id + ending, Fault = fault + ending },
        ImpliesRule implies => implies with { Id = rule.Id + ending },
        NormalRule normal => normal with { Id = rule.Id + ending },
        WarnsRule warns => warns with { Id = rule.Id + ending },
        DrivingRule driving => driving with { Id = rule.Id + ending },
        _ => rule,
    };
}
