using Advice.Arithmetic;
using Advice.Findings;
using Advice.FreezeFrames;
using Advice.Knowledge.Checks;
using Advice.Rules.Files;

namespace Advice.Rules.Checking;

/// <summary>Binds how the value of a check is taken from a freeze frame.</summary>
internal sealed class FrameBinder(SourceBinder sources, Problems problems)
{
    private static readonly string[] Members = ["takes", "where", "unless", "source"];
    private static readonly string[] RangeMembers = ["atLeast", "below"];
    private static readonly Dictionary<string, Input> Inputs = FrameInputs.All.ToDictionary(input => input.Name);

    /// <summary>Reads it; null where the check names none.</summary>
    /// <param name="check">The check.</param>
    /// <param name="places">Where the check can be done.</param>
    /// <param name="measure">What the check measures; null where it does not measure.</param>
    public FrameSource? Read(EntryReader check, IReadOnlyList<string> places, Measure? measure)
    {
        if (check.Inner("freezeFrame", "freeze frame", Members) is not { } reader)
            return null;
        if (measure is null || places.Count > 0)
            check.Refuse(ErrorCode.UnfitMember, "freezeFrame", "only a measured value that has no place is taken from a freeze frame");
        if (!reader.Has("takes"))
            reader.Refuse(ErrorCode.MissingMember, "takes", "'takes' is missing: which values of the freeze frame?");
        var sums = reader.Items("takes").Select(item => Sum(item, measure)).ToList();
        var (where, unless, source) = (Tests(reader, "where"), Tests(reader, "unless"), sources.Required(reader));
        return measure is null || places.Count > 0 || source is null || sums.Count == 0 || sums.Exists(sum => sum.Count == 0) ? null
            : new FrameSource(sums, where, unless, source);
    }

    /// <summary>One member, or several that are added up.</summary>
    private List<NumberInput> Sum(Node item, Measure? measure)
    {
        var sum = new List<NumberInput>();
        if (item is ListNode { Items.Count: 0 })
            problems.Add(ErrorCode.EmptyList, item.Place, "a sum of nothing; name values of the freeze frame or leave it out");
        foreach (var node in item is ListNode list ? list.Items : [item])
        {
            var name = (node as ScalarNode)?.Value ?? node.Shape;
            if (Inputs.GetValueOrDefault(name) is not NumberInput number)
                problems.AddNoValue(node.Place, name, "takes", [.. Inputs.Values.OfType<NumberInput>().Select(input => input.Name)]);
            else if (measure is not null && !UnitConversion.IsPossible(number.Unit!, measure.Unit))
                problems.Add(ErrorCode.UnfitUnit, node.Place, $"'{number.Unit}', the unit of '{name}', cannot be given in '{measure.Unit}'");
            else if (sum.Contains(number))
                problems.Add(ErrorCode.RepeatedWord, node.Place, $"'{name}' stands twice in a sum");
            else
                sum.Add(number);
        }

        return sum;
    }

    private List<FrameTest> Tests(EntryReader frame, string member)
    {
        var tests = new List<FrameTest>();
        if (frame.Raw(member) is not MappingNode mapping)
        {
            if (frame.Has(member))
                frame.Refuse(ErrorCode.WrongShape, member, $"'{member}' must be a mapping such as {{engineSpeed: {{atLeast: 500}}}}, not {frame.Raw(member)!.Shape}");
            return tests;
        }

        var reader = new EntryReader(mapping, "condition on a freeze frame", Inputs.Keys, problems);
        foreach (var key in mapping.Members.Select(one => one.Key))
        {
            if (Inputs.TryGetValue(key.Value, out var input))
                tests.Add(input is WordInput word ? Words(reader, word) : Range(reader, input));
        }

        return tests;
    }

    private static FrameTest Range(EntryReader reader, Input input)
    {
        var range = reader.Inner(input.Name, $"range of '{input.Name}'", RangeMembers);
        var (least, below) = (range?.NumberOrNull("atLeast"), range?.NumberOrNull("below"));
        if (range is not null && !range.Has("atLeast") && !range.Has("below"))
            reader.Refuse(ErrorCode.MissingMember, input.Name, $"'{input.Name}' needs atLeast, below or both");
        if (least >= below)
            reader.Refuse(ErrorCode.OutOfRange, input.Name, $"no number is at least {least} and below {below}");
        return new FrameTest(input, [], least, below);
    }

    private FrameTest Words(EntryReader reader, WordInput input)
    {
        var words = reader.WordOrWords(input.Name);
        foreach (var word in words.Where(word => !input.Words.Contains(word.Value)))
            problems.AddNoValue(word.Place, word.Value, input.Name, input.Words);
        return new FrameTest(input, [.. words.Select(word => word.Value)], null, null);
    }
}
