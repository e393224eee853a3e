using Advice.Evidence;
using Advice.Knowledge;

namespace Advice.Counterfactuals;

/// <summary>The conditions under which rules speak for a fault, each held against a case.</summary>
internal sealed class FaultConditions(Catalogue catalogue)
{
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
    public static Condition Fits(FitsRule rule, Case @case)
    {
        var status = FactWords.Status(rule.When.Test(@case.Vehicle));
        var text = status == ConditionStatus.Failed ? $"It exists only if {rule.OnlyIf}. {rule.Because.For(@case.Workshop.Reader)}" : $"It exists only if {rule.OnlyIf}.";
        return new Condition(rule.Id, status, text, [.. FactWords.Parts(rule.When, @case.Vehicle)]);
    }

    private Condition Prone(ProneRule rule, Advised advised)
    {
        var holds = advised.Evidence.Factors.Any(factor => factor.Rule.Id == rule.Id)
            || (rule.Service is null && rule.When.Test(advised.Case.Vehicle) == Truth.Yes);
        var served = rule.Service is { } test ? Proneness.Served(test, advised.Case) : Truth.Yes;
        var status = holds ? ConditionStatus.Held
            : rule.When.Test(advised.Case.Vehicle) == Truth.No || served == Truth.No ? ConditionStatus.Failed : ConditionStatus.Unknown;
        var effect = rule.Odds > 1 ? "more" : "less";
        return new Condition(
            rule.Id, status, FormattableString.Invariant($"It makes it {effect} likely: its odds times {rule.Odds}. {rule.Because.For(advised.Case.Workshop.Reader)}"),
            [.. FactWords.Parts(rule.When, advised.Case.Vehicle), .. Service(rule, served, advised.Case)]);
    }

    private IEnumerable<ConditionPart> Service(ProneRule rule, Truth served, Case @case) => rule.Service is { } test
        ? [new ConditionPart(ConditionKind.Service, test.Item, FactWords.Status(served), $"the last {catalogue.Services[test.Item].Name.For(@case.Workshop.Reader)}: {Asked(test)} ({Known(served)})")]
        : [];

    private static string Asked(ServiceTest test) => string.Join(", ", new[]
    {
        Either("more than ", test.OlderThanYears, test.OlderThanKm, " or ", " ago"), Either("at most ", test.WithinYears, test.WithinKm, " and ", " ago"),
    }.OfType<string>());

    private static string? Either(string before, double? years, double? km, string joined, string after) => years is null && km is null ? null
        : before + string.Join(joined, new[] { Amount(years, "years"), Amount(km, "km") }.OfType<string>()) + after;

    private static string? Amount(double? number, string unit) => number is { } known ? FormattableString.Invariant($"{known} {unit}") : null;

    private static string Known(Truth served) => served switch { Truth.Yes => "so reported", Truth.No => "reported otherwise", _ => "not known" };
}
