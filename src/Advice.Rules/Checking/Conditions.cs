using Advice.Knowledge.Conditions;

namespace Advice.Rules.Checking;

/// <summary>What conditions on the vehicle have to do with each other, whatever the vehicle.</summary>
internal static class Conditions
{
    /// <summary>The fact on which no vehicle passes all of these tests; null where some vehicle does.</summary>
    public static string? Clash(IEnumerable<FactTest> tests)
    {
        FactTest[] all = [.. tests];
        return Array.Find(all, test => IsEmpty(Array.FindAll(all, other => other.Fact.Id == test.Fact.Id)))?.Fact.Id;
    }

    /// <summary>Whether every vehicle that passes the narrow tests passes the wide ones.</summary>
    public static bool AreWithin(IReadOnlyList<FactTest> narrow, IEnumerable<FactTest> wide) =>
        wide.All(test => IsWithin([.. narrow.Where(one => one.Fact.Id == test.Fact.Id)], test));

    /// <summary>The tests in a form that is the same for the same vehicles.</summary>
    public static string Key(IEnumerable<FactTest> tests) => Sorted(tests.Select(t => $"{t.Fact.Id}:{Sorted(t.Words)}:{t.AtLeast}:{t.Below}"));

    /// <summary>Words in an order that does not depend on the author.</summary>
    public static string Sorted(IEnumerable<string> words) => string.Join(',', words.Order(StringComparer.Ordinal));

    private static bool IsEmpty(FactTest[] tests) => tests[0].Fact.Kind == FactKind.Number
        ? tests.Max(test => test.AtLeast) >= tests.Min(test => test.Below)
        : !Common(tests).Any();

    private static bool IsWithin(FactTest[] narrow, FactTest wide) => narrow.Length > 0
        && (wide.Fact.Kind == FactKind.Number
            ? (wide.AtLeast is null || narrow.Max(test => test.AtLeast) >= wide.AtLeast)
                && (wide.Below is null || narrow.Min(test => test.Below) <= wide.Below)
            : Common(narrow).All(wide.Words.Contains));

    private static IEnumerable<string> Common(IEnumerable<FactTest> tests) =>
        tests.Select(test => test.Words.AsEnumerable()).Aggregate((some, others) => some.Intersect(others));
}
