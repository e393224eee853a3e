using System.Globalization;
using Advice.Evidence;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;
using Advice.Rules.Checking;

namespace Advice.Rules.Bench;

/// <summary>Rules and their parts in one line each, as a rule author reads them.</summary>
internal static class Wording
{
    /// <summary>What a rule says, without its reason.</summary>
    public static string Of(Rule rule) => rule switch
    {
        ShowsRule shows => $"{shows.Fault} shows {Name(shows.Sign)} {Often(shows.Often)}{Circumstances(shows.Occasions, shows.Without)}{Vehicles(shows.When)}",
        ProneRule prone => $"odds of {Any(prone.Faults)} × {Number(prone.Odds)}{Service(prone.Service)}{Vehicles(prone.When)}",
        FitsRule fits => $"{Any([.. fits.Faults, .. fits.Checks, .. fits.Services])} only{Vehicles(fits.When)}",
        ImpliesRule implies => $"{Name(implies.Sign)} implies {Name(implies.Implied)}{Circumstances(implies.Occasions, implies.Without)}{Vehicles(implies.When)}",
        WarnsRule warns => $"{Trigger(warns.Symptoms, warns.Checks, warns.Fault, warns.Probability)} calls for {warns.Caution}{Circumstances(warns.Occasions, warns.Without)}{Vehicles(warns.When)}",
        DrivingRule driving => $"{Trigger(driving.Symptoms, [], driving.Fault, driving.Probability)} limits driving to {FormatWords.Of(driving.Advice)}{Circumstances(driving.Occasions, driving.Without)}{Vehicles(driving.When)}",
        NormalRule normal => $"{Number(normal.Share)} of the reports of {normal.Symptom} are no fault{Circumstances(normal.Occasions, normal.Without)}{Vehicles(normal.When)}",
        _ => throw new ArgumentOutOfRangeException(nameof(rule), rule.GetType().Name, null),
    };

    /// <summary>A rule with its id, reason and source.</summary>
    public static string WithReason(Rule rule) =>
        $"{Of(rule)}  [{rule.Id}]{(rule.Because.Trade.Length == 0 ? "" : $" {rule.Because.Trade}")}{(rule.Source is null ? "" : $" ({rule.Source})")}";

    /// <summary>A frequency with its word.</summary>
    public static string Often(double share) =>
        FormatWords.Often.Where(word => word.Value == share).Select(word => word.Key + " ").FirstOrDefault("") + Number(share);

    /// <summary>The id of a sign.</summary>
    public static string Name(Sign sign) => sign.Value is null ? sign.Id : $"{sign.Id} = {sign.Value}";

    /// <summary>A sign as the case has it.</summary>
    public static string Name(SeenSign seen) =>
        $"{(seen.Present ? "" : "no ")}{Name(seen.Sign)}{string.Concat(seen.Occasions.Select(occasion => $" @{occasion}"))}{(seen.Position is null ? "" : $" ({seen.Position})")}";

    /// <summary>A number in at most four decimals.</summary>
    public static string Number(double number) => number.ToString("0.####", CultureInfo.InvariantCulture);

    /// <summary>A condition on the vehicle; nothing where it is always met.</summary>
    public static string Vehicles(VehicleCondition when) => when.Tests.Count == 0 ? "" : $" where {string.Join(" and ", when.Tests.Select(Test))}";

    private static string Test(FactTest test) => test.Fact.Kind != FactKind.Number
        ? $"{test.Fact.Id} is {Any(test.Words)}"
        : string.Join(" and ", new[] { Bound("at least", test.AtLeast), Bound("below", test.Below) }.OfType<string>().Select(bound => $"{test.Fact.Id} is {bound}"));

    private static string? Bound(string word, double? number) => number is { } bound ? $"{word} {Number(bound)}" : null;

    private static string Circumstances(IReadOnlyList<string> occasions, IReadOnlyList<string> without) =>
        $"{(occasions.Count == 0 ? "" : $" when {Any(occasions)}")}{(without.Count == 0 ? "" : $" without {Any(without)}")}";

    private static string Trigger(IReadOnlyList<string> symptoms, IReadOnlyList<string> checks, string? fault, double probability) =>
        symptoms.Count > 0 ? string.Join(" with ", symptoms) : checks.Count > 0 ? Any(checks) : $"{fault} from {Number(probability)}";

    private static string Service(ServiceTest? test) => test is null ? "" : " if " + string.Join(", ", new[]
    {
        Bound("older than years", test.OlderThanYears), Bound("older than km", test.OlderThanKm),
        Bound("within years", test.WithinYears), Bound("within km", test.WithinKm),
    }.OfType<string>().Select(bound => $"{test.Item} {bound}"));

    private static string Any(IReadOnlyList<string> words) => string.Join(" or ", words);
}
