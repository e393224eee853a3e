using Advice.Evidence;
using Advice.Knowledge;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Words;

namespace Advice.Counterfactuals;

/// <summary>The conditions under which rules speak for a fault, each held against a case.</summary>
internal sealed class FaultConditions(Catalogue catalogue)
{
    private readonly FactWords _facts = new(catalogue);

    private readonly ILookup<string, ProneRule> _prone = catalogue.Rules.Values.OfType<ProneRule>().OrderBy(rule => rule.Id, StringComparer.Ordinal)
        .SelectMany(rule => rule.Faults, (rule, fault) => (fault, rule)).ToLookup(pair => pair.fault, pair => pair.rule);

    /// <summary>What rules on a fault ask of the vehicle.</summary>
    public IEnumerable<VehicleCondition> OnVehicle(string fault) =>
        catalogue.FitsByFault[fault].Select(rule => rule.When).Concat(catalogue.ShowsByFault[fault].Select(rule => rule.When)).Concat(_prone[fault].Where(rule => rule.Odds > 1).Select(rule => rule.When));

    /// <summary>All conditions: whether it exists, by what it shows itself, what makes it likely; of each what holds, what fails, then what is unknown.</summary>
    public IReadOnlyList<Condition> Of(Fault fault, Advised advised)
    {
        var signs = new SignConditions(catalogue, advised);
        return
        [
            .. catalogue.FitsByFault[fault.Id].Select(rule => Fits(rule, advised.Case)),
            .. catalogue.ShowsByFault[fault.Id].Select(signs.Of).OrderBy(condition => condition.Status),
            .. _prone[fault.Id].Select(rule => Prone(rule, advised)).OrderBy(condition => condition.Status),
        ];
    }

    /// <summary>Whether some things exist on the vehicle.</summary>
    public Condition Fits(FitsRule rule, Case @case)
    {
        var status = FactWords.Status(rule.When.Test(@case.Vehicle));
        var reader = @case.Workshop.Reader;
        var text = catalogue.Say(reader, Sentences.ExistsOnlyIf, rule.OnlyIf) + (status == ConditionStatus.Failed ? $" {rule.Because.For(reader)}" : "");
        return new Condition(rule.Id, status, text, [.. _facts.Parts(rule.When, @case)]);
    }

    private Condition Prone(ProneRule rule, Advised advised)
    {
        var holds = advised.Evidence.Factors.Any(factor => factor.Rule.Id == rule.Id)
            || (rule.Service is null && rule.When.Test(advised.Case.Vehicle) == Truth.Yes);
        var served = rule.Service is { } test ? Proneness.Served(test, advised.Case) : Truth.Yes;
        var status = holds ? ConditionStatus.Held
            : rule.When.Test(advised.Case.Vehicle) == Truth.No || served == Truth.No ? ConditionStatus.Failed : ConditionStatus.Unknown;
        var (reader, effect) = (advised.Case.Workshop.Reader, rule.Odds > 1 ? Sentences.MoreLikely : Sentences.LessLikely);
        return new Condition(
            rule.Id, status, $"{catalogue.Say(reader, effect, rule.Odds)} {rule.Because.For(reader)}",
            [.. _facts.Parts(rule.When, advised.Case), .. Service(rule, served, advised.Case)]);
    }

    private IEnumerable<ConditionPart> Service(ProneRule rule, Truth served, Case @case)
    {
        if (rule.Service is not { } test)
            yield break;
        var reader = @case.Workshop.Reader;
        var last = catalogue.Say(reader, Sentences.LastService, catalogue.Services[test.Item].Name.For(reader));
        var asked = new[] { Ago(Sentences.MoreThanAgo, test.OlderThanYears, test.OlderThanKm, " or "), Ago(Sentences.AtMostAgo, test.WithinYears, test.WithinKm, " and ") };
        var known = catalogue.Say(reader, served switch { Truth.Yes => Sentences.PartReported, Truth.No => Sentences.ServiceOtherwise, _ => Sentences.ServiceNotKnown });
        yield return new ConditionPart(
            ConditionKind.Service, test.Item, FactWords.Status(served), $"{last}: {string.Join(", ", asked.OfType<Saying>().Select(one => catalogue.Say(reader, one)))} ({known})");
    }

    private static Saying? Ago(Sentence sentence, double? years, double? km, string joined) => years is null && km is null ? null
        : new(sentence, string.Join(joined, new[] { Amount(years, "years"), Amount(km, "km") }.OfType<string>()));

    private static string? Amount(double? number, string unit) => number is { } known ? FormattableString.Invariant($"{known} {unit}") : null;
}
