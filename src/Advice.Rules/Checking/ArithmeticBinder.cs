using Advice.Arithmetic;
using Advice.Findings;
using Advice.Knowledge;
using Advice.Rules.Files;

namespace Advice.Rules.Checking;

/// <summary>Binds a check to the workshop arithmetic that its value goes into.</summary>
internal static class ArithmeticBinder
{
    private static readonly string[] Members = ["computation", "input", "with"];

    /// <summary>The computation that an entry names.</summary>
    public static Computation? Computation(this EntryReader reader)
    {
        var name = reader.Text("computation");
        var found = Computations.All.FirstOrDefault(one => one.Name == name);
        if (found is null && name.Length > 0)
            reader.Refuse(ErrorCode.UnknownWord, "computation", $"unknown computation '{name}'", NearestWord.To(name, [.. Computations.All.Select(one => one.Name)]));
        return found;
    }

    /// <summary>Reads it; null where the check names none.</summary>
    /// <param name="check">The check.</param>
    /// <param name="unit">Unit that the check measures in; null where it does not measure.</param>
    /// <param name="problems">Where to note errors.</param>
    public static CheckArithmetic? Read(EntryReader check, string? unit, Problems problems)
    {
        if (check.Inner("arithmetic", "arithmetic", Members) is not { } reader)
            return null;
        if (unit is null)
            check.Refuse(ErrorCode.UnfitMember, "arithmetic", "only a measured value goes into workshop arithmetic");
        var (computation, name) = (reader.Computation(), reader.Text("input"));
        var with = With(reader);
        if (computation is null || unit is null)
            return null;
        var inputs = computation.Inputs.ToDictionary(input => input.Name);
        if (!inputs.TryGetValue(name, out var input) || input is not NumberInput number)
            problems.AddNoValue(reader.At("input"), name, "input", [.. computation.Inputs.OfType<NumberInput>().Select(one => one.Name)]);
        else if (number.Unit is { } its ? !UnitConversion.IsPossible(unit, its) : unit != "count")
            reader.Refuse(ErrorCode.UnfitUnit, "input", $"'{unit}' cannot be given in '{number.Unit ?? "count"}', the unit of '{name}'");
        foreach (var (member, word) in with)
        {
            if (inputs.GetValueOrDefault(member) is not WordInput given)
                reader.Refuse(ErrorCode.UnknownMember, "with", $"'{computation.Name}' takes no word '{member}'");
            else if (!given.Words.Contains(word))
                problems.AddNoValue(reader.At("with"), word, member, given.Words);
        }

        foreach (var missing in computation.Inputs.Where(one => !one.Optional && one is not DayInput && one.Name != name && !with.ContainsKey(one.Name)))
            reader.Refuse(ErrorCode.MissingMember, "computation", $"'{computation.Name}' also needs '{missing.Name}', which a value of this check does not give");
        return new CheckArithmetic(computation.Name, name, with);
    }

    private static Dictionary<string, string> With(EntryReader reader)
    {
        var words = new Dictionary<string, string>(StringComparer.Ordinal);
        if (reader.Raw("with") is not { } node)
            return words;
        foreach (var (key, value) in node is MappingNode mapping ? mapping.Members : [])
            words.TryAdd(key.Value, value is ScalarNode scalar ? scalar.Value : "");
        if (words.Count == 0)
            reader.Refuse(ErrorCode.WrongShape, "with", $"'with' must be a mapping of inputs to words, not {node.Shape}");
        return words;
    }
}
