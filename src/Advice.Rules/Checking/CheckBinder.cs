using Advice.Findings;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Words;

namespace Advice.Rules.Checking;

/// <summary>Binds checks.</summary>
internal sealed class CheckBinder(Tables tables, SourceBinder sources, Problems problems)
{
    private static readonly string[] Members =
    [
        "id", "title", "plain", "system", "area", "places", "minutes", "doneBy", "needs", "tools", "method", "measures", "observations",
        "detects", "falseAlarm", "cautions", "readsCodes", "without", "arithmetic", "freezeFrame", "source",
    ];

    private static readonly string[] MeasureMembers = ["unit", "plausible", "givenLimit"];
    private static readonly string[] ObservationMembers = ["id", "normal", "text", "deficiency"];
    private static readonly string[] DetectsMembers = ["fault", "surely", "value"];

    /// <summary>Binds all entries.</summary>
    public void BindAll(IReadOnlyList<Entry> entries)
    {
        foreach (var (id, node) in entries)
            tables.Checks.Bind(id, Check(id, new EntryReader(node, "check", Members, problems)));
    }

    private Check? Check(string id, EntryReader reader)
    {
        sources.Optional(reader);
        var title = reader.TextPair("title");
        var system = reader.Id("system", tables.Systems);
        var area = reader.Id("area", tables.Areas);
        var places = reader.Ids("places", tables.Positions);
        var minutes = reader.Whole("minutes", 1, 120);
        var doneBy = reader.OneOf<DoneBy>("doneBy", FormatWords.DoneBy);
        var needs = WithIncluded(reader.Ids("needs", tables.SetUps, emptyIsFine: true));
        var method = reader.Texts("method");
        if (!reader.Has("method"))
            reader.Refuse(ErrorCode.MissingMember, "method", "'method' is missing: what does one do?");
        if (reader.Has("measures") == reader.Has("observations"))
            reader.Refuse(ErrorCode.ChooseOne, "id", $"the check '{id}' has exactly one of 'measures' and 'observations'");
        var observations = Observations(reader);
        var cautions = reader.Ids("cautions", tables.Cautions, emptyIsFine: true).Concat(needs.SelectMany(need => need.Cautions)).Distinct();
        var measure = Measure(reader);
        var check = new Check(
            id, title, system, tables.Areas.TryGet(area, out var known) ? known : new Area(area, area, 0), places, minutes, doneBy, needs,
            reader.Texts("tools", emptyIsFine: true), method, measure, observations, Detects(reader, observations),
            reader.Number("falseAlarm", 0.001, 0.5), [.. cautions], reader.Flag("readsCodes"))
        {
            Without = [.. reader.Ids("without", tables.Symptoms).Concat(needs.SelectMany(need => need.Without)).Distinct()],
            Arithmetic = ArithmeticBinder.Read(reader, measure?.Unit, tables.Facts, problems),
            FreezeFrame = new FrameBinder(sources, problems).Read(reader, places, measure),
        };
        return known is null ? null : check;
    }

    private SetUp[] WithIncluded(IReadOnlyList<string> needs)
    {
        var all = new Dictionary<string, SetUp>(StringComparer.Ordinal);
        foreach (var need in needs)
            Add(need);
        return [.. all.Values.OrderBy(setUp => setUp.Order).ThenBy(setUp => setUp.Id, StringComparer.Ordinal)];

        void Add(string id)
        {
            if (!tables.SetUps.TryGet(id, out var setUp) || !all.TryAdd(id, setUp))
                return;
            foreach (var included in setUp.Includes)
                Add(included);
        }
    }

    private Measure? Measure(EntryReader check)
    {
        if (check.Inner("measures", "measure", MeasureMembers) is not { } reader)
            return null;
        var unit = reader.Text("unit");
        if (unit.Length > 0 && !UnitConversion.Known.Contains(unit))
            problems.AddNoValue(reader.At("unit"), unit, "unit", UnitConversion.Known);
        var given = reader.Has("givenLimit") ? reader.OneOf("givenLimit", FormatWords.Deficiency) : (Deficiency?)null;
        var range = reader.Items("plausible").Select(item => reader.Number(item, "a plausible value")).ToList();
        if (range is [{ } least, { } most] && least < most)
            return new Measure(unit, least, most, given);
        if (range.Count != 2 || range.All(end => end is not null))
            reader.Refuse(ErrorCode.OutOfRange, "plausible", "'plausible' must be [smallest, largest]: the values that are no slip of the pen");
        return new Measure(unit, 0, 0);
    }

    private static List<Observation> Observations(EntryReader check)
    {
        var scale = new List<Observation>();
        if (!check.Has("observations"))
            return scale;
        foreach (var reader in check.Inners("observations", "observation", ObservationMembers))
        {
            var value = new Observation(
                reader.Text("id"), reader.Flag("normal"), reader.Text("text"),
                reader.Has("deficiency") ? reader.OneOf("deficiency", FormatWords.Deficiency) : null);
            if (scale.Exists(other => other.Id == value.Id))
                reader.Refuse(ErrorCode.RepeatedWord, "id", $"the value '{value.Id}' stands twice in this scale");
            else
                scale.Add(value);
        }

        if (scale.Count > 0 && scale.Count(value => value.Normal) != 1)
            check.Refuse(ErrorCode.UnfitScale, "observations", $"exactly one value of a scale is normal, not {scale.Count(value => value.Normal)}");
        if (scale.Count == 1)
            check.Refuse(ErrorCode.UnfitScale, "observations", "a scale needs the normal value and at least one other");
        return scale;
    }

    private List<Detects> Detects(EntryReader check, List<Observation> scale)
    {
        var found = new List<Detects>();
        foreach (var reader in check.Inners("detects", "detected fault", DetectsMembers))
        {
            var detects = new Detects(reader.Id("fault", tables.Faults), reader.Share("surely"), reader.TextOrNull("value"));
            if (detects.Value is not null)
                CheckValue(reader, detects.Value, scale);
            if (found.Exists(other => other.Fault == detects.Fault && other.Value == detects.Value && other.Fault.Length > 0))
                reader.Refuse(ErrorCode.RepeatedWord, "fault", $"'{detects.Fault}' stands twice in this check; add a 'value' or keep one");
            else
                found.Add(detects);
        }

        return found;
    }

    private static void CheckValue(EntryReader reader, string value, List<Observation> scale)
    {
        var abnormal = scale.Where(other => !other.Normal).Select(other => other.Id).ToList();
        if (scale.Count == 0)
            reader.Refuse(ErrorCode.UnfitMember, "value", "a measured check has no values; leave 'value' out");
        else if (!abnormal.Contains(value))
            reader.Refuse(ErrorCode.UnknownWord, "value", $"'{value}' is no abnormal value of this check; there are {string.Join(", ", abnormal)}", NearestWord.To(value, abnormal));
    }
}
