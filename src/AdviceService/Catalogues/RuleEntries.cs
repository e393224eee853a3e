using System.Globalization;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;

namespace AdviceService.Catalogues;

/// <summary>Rules as callers read them.</summary>
internal static class RuleEntries
{
    /// <summary>The entry of a rule.</summary>
    public static RuleEntry Of(Rule rule) => rule switch
    {
        ShowsRule shows => Entry(shows, "shows", [$"fault:{shows.Fault}"], [Name(shows.Sign)], shows.Occasions, shows.Often),
        ProneRule prone => Entry(prone, "prone", prone.Service is { } service ? [$"service:{service.Item}"] : [], Named("fault", prone.Faults), [], prone.Odds),
        FitsRule fits => Entry(
            fits, "fits", [], [.. Named("fault", fits.Faults), .. Named("check", fits.Checks), .. Named("service", fits.Services)], [], null),
        ImpliesRule implies => Entry(implies, "implies", [Name(implies.Sign)], [Name(implies.Implied)], implies.Occasions, null),
        WarnsRule warns => Entry(
            warns, "warns", [.. Triggers(warns.Symptoms, warns.Fault), .. Named("check", warns.Checks)], [$"caution:{warns.Caution}"], warns.Occasions, null),
        DrivingRule driving => Entry(
            driving, "driving", Triggers(driving.Symptoms, driving.Fault), [$"driving:{CamelCase(driving.Advice.ToString())}"], driving.Occasions, null),
        NormalRule normal => Entry(normal, "normal", [$"symptom:{normal.Symptom}"], [], normal.Occasions, normal.Share),
        _ => throw new InvalidOperationException($"'{rule.Id}' is of no known kind."),
    };

    private static RuleEntry Entry(
        Rule rule, string kind, IReadOnlyList<string> when, IReadOnlyList<string> then, IReadOnlyList<string> occasions, double? strength) => new(
        rule.Id, kind, when, then, occasions, [.. rule.When.Tests.Select(Condition)], strength, rule.Because.Trade, rule.Because.Plain,
        rule.Source?.ToString());

    private static string[] Triggers(IReadOnlyList<string> symptoms, string? fault) =>
        [.. Named("symptom", symptoms), .. fault is null ? Array.Empty<string>() : [$"fault:{fault}"]];

    private static IReadOnlyList<string> Named(string kind, IReadOnlyList<string> ids) => [.. ids.Select(id => $"{kind}:{id}")];

    private static string Name(Sign sign) => $"{CamelCase(sign.Kind.ToString())}:{sign.Id}";

    private static string Condition(FactTest test) => test.Words.Count > 0
        ? $"{test.Fact.Id}: {string.Join(" or ", test.Words)}"
        : string.Create(CultureInfo.InvariantCulture, $"{test.Fact.Id}:{(test.AtLeast is { } low ? $" at least {low}" : "")}{(test.Below is { } high ? $" below {high}" : "")}");

    private static string CamelCase(string name) => char.ToLowerInvariant(name[0]) + name[1..];
}
