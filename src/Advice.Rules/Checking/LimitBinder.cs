using Advice.Findings;
using Advice.Knowledge;

namespace Advice.Rules.Checking;

/// <summary>Binds limits of measured checks.</summary>
internal sealed class LimitBinder(Tables tables, SourceBinder sources, ConditionBinder conditions, Problems problems)
{
    private static readonly string[] Members =
    [
        "id", "check", "minimum", "maximum", "unit", "jurisdiction", "vehicle", "position", "deficiency", "text", "plain", "source",
    ];

    /// <summary>Binds all entries.</summary>
    public void BindAll(IReadOnlyList<Entry> entries)
    {
        foreach (var (id, node) in entries)
            tables.Limits.Bind(id, Limit(id, new EntryReader(node, "limit", Members, problems)));
    }

    private Limit? Limit(string id, EntryReader reader)
    {
        var check = reader.Id("check", tables.Checks);
        var (minimum, maximum) = (reader.NumberOrNull("minimum"), reader.NumberOrNull("maximum"));
        if (!reader.Has("minimum") && !reader.Has("maximum"))
            reader.Refuse(ErrorCode.MissingMember, "id", $"the limit '{id}' needs a minimum or a maximum");
        if (minimum > maximum)
            reader.Refuse(ErrorCode.OutOfRange, "minimum", "the minimum is above the maximum");
        var unit = reader.Text("unit");
        if (tables.Checks.TryGet(check, out var measured))
            Fits(reader, measured, unit);
        var source = sources.Required(reader);
        var limit = new Limit(
            id, check, minimum, maximum, unit, reader.IdOrNull("jurisdiction", tables.Jurisdictions), conditions.Read(reader),
            reader.IdOrNull("position", tables.Positions), reader.OneOf<Deficiency>("deficiency", FormatWords.Deficiency),
            reader.TextPair("text"), source!);
        return source is null ? null : limit;
    }

    private static void Fits(EntryReader reader, Check check, string unit)
    {
        if (check.Measure is null)
            reader.Refuse(ErrorCode.UnfitMember, "check", $"'{check.Id}' is observed, not measured, so it has no limit");
        else if (unit.Length > 0 && !UnitConversion.IsPossible(unit, check.Measure.Unit))
            reader.Refuse(ErrorCode.UnfitUnit, "unit", $"'{unit}' cannot be compared with '{check.Measure.Unit}', the unit of '{check.Id}'");
    }
}
