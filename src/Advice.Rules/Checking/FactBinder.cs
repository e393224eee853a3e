using Advice.Knowledge.Conditions;
using Advice.Rules.Files;

namespace Advice.Rules.Checking;

/// <summary>Binds the vehicle facts that conditions may ask for.</summary>
internal sealed class FactBinder(Tables tables, SourceBinder sources, Problems problems)
{
    private static readonly string[] Members = ["id", "name", "values", "truth", "number", "kinds", "shares", "source"];

    /// <summary>Binds all entries.</summary>
    public void BindAll(IReadOnlyList<Entry> entries)
    {
        foreach (var (id, node) in entries)
            tables.Facts.Bind(id, Fact(id, new EntryReader(node, "vehicle fact", Members, problems)));
    }

    private VehicleFact Fact(string id, EntryReader reader)
    {
        var name = reader.Text("name");
        var (truth, number) = (reader.Flag("truth"), reader.Flag("number"));
        if ((truth ? 1 : 0) + (number ? 1 : 0) + (reader.Has("values") ? 1 : 0) != 1)
            reader.Refuse(ErrorCode.ChooseOne, "id", "a vehicle fact has exactly one of 'values', 'truth: true' and 'number: true'");
        sources.Optional(reader);
        var kind = number ? FactKind.Number : truth ? FactKind.Truth : FactKind.Word;
        var values = truth ? new Dictionary<string, string> { ["true"] = "yes", ["false"] = "no" } : number ? [] : Names(reader, "values", "value");
        if (number && reader.Has("shares"))
            reader.Refuse(ErrorCode.UnfitMember, "shares", "a number has no shares");
        return new VehicleFact(id, name, kind, values, values.Count == 0 ? new Dictionary<string, double>() : Shares(reader, values))
        {
            Kinds = Kinds(reader, values),
        };
    }

    private static Dictionary<string, IReadOnlyDictionary<string, string>> Kinds(EntryReader reader, Dictionary<string, string> values)
    {
        var kinds = new Dictionary<string, IReadOnlyDictionary<string, string>>(StringComparer.Ordinal);
        if (reader.Inner("kinds", "list of kinds", values.Keys) is not { } given)
            return kinds;
        foreach (var value in values.Keys.Where(given.Has))
            kinds.Add(value, Names(given, value, "kind"));
        return kinds;
    }

    private static Dictionary<string, string> Names(EntryReader reader, string member, string what)
    {
        var words = new Dictionary<string, string>(StringComparer.Ordinal);
        if (reader.Raw(member) is not MappingNode mapping)
        {
            if (reader.Has(member))
                reader.Refuse(ErrorCode.WrongShape, member, $"'{member}' must be a mapping from each {what} to its name");
            return words;
        }

        var names = reader.Inner(member, $"list of {what}s", [.. mapping.Members.Select(m => m.Key.Value)])!;
        foreach (var (key, _) in mapping.Members)
            words.Add(key.Value, names.Text(key.Value));
        return words;
    }

    private Dictionary<string, double> Shares(EntryReader reader, Dictionary<string, string> values)
    {
        var shares = new Dictionary<string, double>(StringComparer.Ordinal);
        if (reader.Inner("shares", "list of shares", values.Keys) is not { } given)
        {
            if (!reader.Has("shares"))
                reader.Refuse(ErrorCode.MissingMember, "shares", "'shares' is missing: how common is each value where the fact is not stated?");
            return shares;
        }

        sources.Required(reader);
        var sound = problems.Count;
        foreach (var value in values.Keys)
            shares.Add(value, given.Number(value, 0, 1));
        if (problems.Count == sound && Math.Abs(shares.Values.Sum() - 1) > 0.001)
            reader.Refuse(ErrorCode.SharesNotWhole, "shares", FormattableString.Invariant($"the shares add up to {shares.Values.Sum():0.###}; they must add up to 1"));
        return shares;
    }
}
