using Advice.Findings;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Signs;
using Advice.Knowledge.Words;

namespace Advice.Rules.Checking;

/// <summary>Binds limits of measured checks.</summary>
internal sealed class LimitBinder(Tables tables, SourceBinder sources, ConditionBinder conditions, Problems problems)
{
    private static readonly string[] Members =
    [
        "id", "check", "minimum", "maximum", "unit", "acrossAxle", "times", "means", "jurisdiction", "vehicle", "position", "deficiency", "text", "plain",
        "source",
    ];

    private static readonly string[] MeansMembers = ["check", "value"];

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
        var across = reader.Has("acrossAxle") ? reader.OneOf("acrossAxle", FormatWords.AxleComparison) : (AxleComparison?)null;
        if (tables.Checks.TryGet(check, out var measured))
            Fits(reader, measured, unit, across);
        var source = sources.Required(reader);
        var limit = new Limit(
            id, check, minimum, maximum, unit, reader.IdOrNull("jurisdiction", tables.Jurisdictions), conditions.Read(reader),
            reader.IdOrNull("position", tables.Positions), reader.OneOf<Deficiency>("deficiency", FormatWords.Deficiency),
            reader.TextPair("text"), source!, across, Times(reader), Means(reader, across));
        return source is null ? null : limit;
    }

    private static void Fits(EntryReader reader, Check check, string unit, AxleComparison? across)
    {
        if (check.Measure is null)
            reader.Refuse(ErrorCode.UnfitMember, "check", $"'{check.Id}' is observed, not measured, so it has no limit");
        else if (across == AxleComparison.Share && unit.Length > 0 && unit is not ("percent" or "%"))
            reader.Refuse(ErrorCode.UnfitUnit, "unit", $"a share across an axle is in percent, not in '{unit}'");
        else if (unit.Length > 0 && unit != check.Measure.Unit && !UnitConversion.Known.Contains(unit))
            reader.Refuse(ErrorCode.UnfitUnit, "unit", $"'{unit}' is no unit that is known here; '{check.Id}' is measured in '{check.Measure.Unit}'");
        else if (across != AxleComparison.Share && unit.Length > 0 && !UnitConversion.IsPossible(unit, check.Measure.Unit))
            reader.Refuse(ErrorCode.UnfitUnit, "unit", $"'{unit}' cannot be compared with '{check.Measure.Unit}', the unit of '{check.Id}'");
    }

    private string? Times(EntryReader reader)
    {
        var id = reader.IdOrNull("times", tables.Facts);
        if (id is not null && tables.Facts.TryGet(id, out var fact) && fact.Kind != FactKind.Number)
            reader.Refuse(ErrorCode.WrongShape, "times", $"'{id}' is no number");
        return id;
    }

    private Sign? Means(EntryReader limit, AxleComparison? across)
    {
        if (limit.Inner("means", "outcome", MeansMembers) is not { } reader)
            return null;
        if (across is null)
            limit.Refuse(ErrorCode.UnfitMember, "means", "only a limit across an axle means the outcome of another check");
        var (check, value) = (reader.Id("check", tables.Checks), reader.TextOrNull("value"));
        if (!tables.Checks.TryGet(check, out var other))
            return null;
        var abnormal = other.Measure is null ? other.Abnormal.Select(one => one.Id).ToList() : [];
        if (other.Measure is not null && value is not null)
            reader.Refuse(ErrorCode.UnfitMember, "value", "a measured check has no values; leave 'value' out");
        else if (other.Measure is null && !abnormal.Contains(value ?? ""))
            reader.Refuse(ErrorCode.UnknownWord, value is null ? "check" : "value", $"an abnormal value of '{check}' is needed; there are {string.Join(", ", abnormal)}", value is null ? null : NearestWord.To(value, abnormal));
        return Sign.Outcome(check, value ?? Sign.BeyondLimit);
    }
}
