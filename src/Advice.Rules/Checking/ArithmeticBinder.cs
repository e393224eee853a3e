using Advice.Arithmetic;
using Advice.Findings;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Words;
using Advice.Rules.Files;

namespace Advice.Rules.Checking;

/// <summary>Binds a check to the workshop arithmetic that its value goes into.</summary>
internal static class ArithmeticBinder
{
    private static readonly string[] Members = ["computation", "input", "with", "asks", "facts", "judges"];

    // What has no unit in a computation is counted, or is the ratio of two like quantities; water has a density of 1 kg/L.
    private static readonly string[] Plain = ["count", "lambda", "kg/L"];

    /// <summary>The computation that an entry names.</summary>
    public static Computation? Computation(this EntryReader reader)
    {
        var name = reader.Text("computation");
        var found = Computations.Find(name);
        if (found is null && name.Length > 0)
            reader.Refuse(ErrorCode.UnknownWord, "computation", $"unknown computation '{name}'", NearestWord.To(name, [.. Computations.All.Select(one => one.Name)]));
        return found;
    }

    /// <summary>Reads all that a check names, one or a list.</summary>
    /// <param name="check">The check.</param>
    /// <param name="unit">Unit that the check measures in; null where it does not measure.</param>
    /// <param name="facts">The facts about vehicles.</param>
    /// <param name="problems">Where to note errors.</param>
    public static IReadOnlyList<CheckArithmetic> Read(EntryReader check, string? unit, Table<VehicleFact> facts, Problems problems)
    {
        IReadOnlyList<EntryReader> readers = check.Raw("arithmetic") is ListNode
            ? [.. check.Inners("arithmetic", "arithmetic", Members)]
            : check.Inner("arithmetic", "arithmetic", Members) is { } only ? [only] : [];
        List<CheckArithmetic> all = [.. readers.Select(reader => Read(check, reader, unit, facts, problems)).OfType<CheckArithmetic>()];
        foreach (var name in InDoubt(all))
            check.Refuse(ErrorCode.Contradiction, "arithmetic", $"'{name}' is not the same in the computations of this check, so that a finding can carry it for one of them only");
        return all;
    }

    /// <summary>Names of inputs that a finding would carry for several computations, though they do not mean the same there.</summary>
    private static IEnumerable<string> InDoubt(IEnumerable<CheckArithmetic> all) => all
        .SelectMany(named => Computations.Find(named.Computation)!.Inputs.Where(input => named.Asks.Contains(input.Name)))
        .GroupBy(input => input.Name).Where(same => same.Select(input => (input.GetType(), (input as NumberInput)?.Unit)).Distinct().Count() > 1)
        .Select(same => same.Key);

    private static CheckArithmetic? Read(EntryReader check, EntryReader reader, string? unit, Table<VehicleFact> facts, Problems problems)
    {
        if (unit is null && reader.Has("input"))
            check.Refuse(ErrorCode.UnfitMember, "arithmetic", "only a measured value is an input of workshop arithmetic");
        var (computation, name) = (reader.Computation(), reader.TextOrNull("input"));
        var (with, asks, known) = (Words(reader, "with"), reader.Texts("asks"), Words(reader, "facts"));
        if (computation is null || (unit is null && name is not null))
            return null;
        var inputs = computation.Inputs.ToDictionary(input => input.Name);
        if (name is not null)
            Measured(reader, name, computation, unit!, problems);
        foreach (var (member, word) in with)
        {
            if (inputs.GetValueOrDefault(member) is not WordInput given)
                reader.Refuse(ErrorCode.UnknownMember, "with", $"'{computation.Name}' takes no word '{member}'");
            else if (!given.Words.Contains(word))
                problems.AddNoValue(reader.At("with"), word, member, given.Words);
        }

        string[] free = [.. inputs.Values.Where(one => one is not DayInput { Past: false } && one.Name != name && !with.ContainsKey(one.Name)).Select(one => one.Name)];
        foreach (var asked in asks.Except(free))
            problems.AddNoValue(reader.At("asks"), asked, "asks", free);
        foreach (var missing in free.Where(one => inputs[one].IsRequired).Except(asks))
            reader.Refuse(ErrorCode.MissingMember, "computation", $"'{computation.Name}' also needs '{missing}', which a value of this check does not give; let a finding carry it: 'asks'");
        foreach (var (member, fact) in known)
        {
            if (!asks.Contains(member))
                problems.AddNoValue(reader.At("facts"), member, "facts", asks);
            else if (!facts.TryGet(fact, out var found) || inputs.GetValueOrDefault(member) is not WordInput word || found.Values.Count == 0 || found.Values.Values.Except(word.Words).Any())
                reader.Refuse(ErrorCode.UnknownWord, "facts", $"'{fact}' is no vehicle fact whose values are named like the words of '{member}'");
        }

        return new CheckArithmetic(computation.Name, name, with, asks, known) { Judges = Judges(reader, computation, name, problems) };
    }

    private static string? Judges(EntryReader reader, Computation computation, string? measured, Problems problems)
    {
        if (reader.TextOrNull("judges") is not { } judges)
            return null;
        IReadOnlyList<string> corrected = measured is null ? [] : computation.Corrects;
        if (!corrected.Contains(judges))
            problems.AddNoValue(reader.At("judges"), judges, "judges", corrected);
        return judges;
    }

    private static void Measured(EntryReader reader, string name, Computation computation, string unit, Problems problems)
    {
        if (computation.Inputs.FirstOrDefault(one => one.Name == name) is not NumberInput number)
            problems.AddNoValue(reader.At("input"), name, "input", [.. computation.Inputs.OfType<NumberInput>().Select(one => one.Name)]);
        else if (number.Unit is { } its ? !UnitConversion.IsPossible(unit, its) : !Plain.Contains(unit))
            reader.Refuse(ErrorCode.UnfitUnit, "input", $"'{unit}' cannot be given in '{number.Unit ?? "count"}', the unit of '{name}'");
    }

    private static Dictionary<string, string> Words(EntryReader reader, string member)
    {
        var words = new Dictionary<string, string>(StringComparer.Ordinal);
        if (reader.Raw(member) is not { } node)
            return words;
        foreach (var (key, value) in node is MappingNode mapping ? mapping.Members : [])
            words.TryAdd(key.Value, value is ScalarNode scalar ? scalar.Value : "");
        if (words.Count == 0)
            reader.Refuse(ErrorCode.WrongShape, member, $"'{member}' must be a mapping of inputs to words, not {node.Shape}");
        return words;
    }
}
