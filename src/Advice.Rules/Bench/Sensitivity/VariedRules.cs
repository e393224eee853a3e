using System.Collections.Frozen;
using Advice.Knowledge.Codes;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;
using Advice.Rules.Checking;
using Advice.Rules.RuleSets;

namespace Advice.Rules.Bench.Sensitivity;

/// <summary>A rule set with other estimates, and with all that is reckoned from them at load.</summary>
internal static class VariedRules
{
    public static RuleBook Of(RuleBook book, Variation variation)
    {
        var catalogue = book.Catalogue;
        var rules = catalogue.Rules.ToFrozenDictionary(
            rule => rule.Key, rule => rule.Value is ShowsRule shows ? shows with { Often = variation.Often(shows) } : rule.Value);
        var faults = catalogue.Faults.ToFrozenDictionary(fault => fault.Key, fault => fault.Value with { Prior = variation.Prior(fault.Value) });
        var shows = rules.Values.OfType<ShowsRule>().OrderBy(rule => rule.Id, StringComparer.Ordinal).ToList();
        var bySign = shows.ToLookup(rule => rule.Sign);
        var rates = SignRates.Shown(catalogue.Symptoms.Values, catalogue.Codes.Values, faults, bySign);
        var leaks = SignRates.Leaks(rates, sign => sign.Kind == SignKind.Code ? TroubleCode.UnexplainedShare : catalogue.Symptoms[sign.Id].UnexplainedShare);
        return new RuleBook(
            catalogue with { Rules = rules, Faults = faults, ShowsBySign = bySign, ShowsByFault = RuleSetBinder.MostOftenFirst(shows), ShownRates = rates, Leaks = leaks }, $"{book.Revision} {variation.Name}", []);
    }
}
