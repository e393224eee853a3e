using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Signs;
using Advice.Knowledge.Words;
using Advice.Rules.Files;

namespace Advice.Rules.Checking;

/// <summary>Binds the shared words: systems, areas, occasions, positions, jurisdictions, ageing, consequences, cautions and set-ups.</summary>
internal sealed class VocabularyBinder(Tables tables, SourceBinder sources, ConditionBinder conditions, Problems problems)
{
    private static readonly string[] SystemMembers = ["id", "name", "plain", "words", "hints", "trouble"];
    private static readonly string[] AreaMembers = ["id", "name"];
    private static readonly string[] OccasionMembers = ["id", "within", "name", "phrases", "event"];
    private static readonly string[] PositionMembers = ["id", "parts", "phrases"];
    private static readonly string[] JurisdictionMembers = ["id", "name", "within"];
    private static readonly string[] AgeingMembers = ["id", "name", "odometerKm", "ageYears", "source"];
    private static readonly string[] TopicMembers = ["id", "says", "words"];
    private static readonly string[] ConsequenceMembers = ["id", "name", "harm", "source"];
    private static readonly string[] CautionMembers = ["id", "text", "plain", "vehicle", "impliedBy", "source"];
    private static readonly string[] SetUpMembers = ["id", "name", "order", "minutes", "includes", "doneBy", "raises", "drives", "impliedBy", "cautions", "without"];

    /// <summary>Binds all entries of these kinds.</summary>
    public void BindAll(Declarations declared)
    {
        Each("systems", tables.Systems, SystemMembers, (id, r) => new VehicleSystem(id, r.TextPair("name"))
        {
            Words = r.Texts("words"),
            Hints = r.Texts("hints"),
            Trouble = r.IdOrNull("trouble", tables.Symptoms),
        });
        Each("areas", tables.Areas, AreaMembers, (id, r) => new Area(id, r.Text("name"), tables.Areas.Bound.Count));
        Each("occasions", tables.Occasions, OccasionMembers, (id, r) =>
            new Occasion(id, r.IdOrNull("within", tables.Occasions), r.Text("name"), r.Texts("phrases"), r.Flag("event")));
        Each("positions", tables.Positions, PositionMembers, Position);
        Each("topics", tables.Topics, TopicMembers, (id, r) => new Topic(id, r.OneOf("says", FormatWords.Topics), r.RequiredTexts("words")));
        Each("jurisdictions", tables.Jurisdictions, JurisdictionMembers, (id, r) =>
            new Jurisdiction(id, r.Text("name"), r.IdOrNull("within", tables.Jurisdictions)));
        Each("ageing", tables.Ageings, AgeingMembers, Ageing);
        Each("consequences", tables.Consequences, ConsequenceMembers, (id, r) =>
        {
            sources.Required(r);
            return new Consequence(id, r.Text("name"), r.Number("harm", 0.01, 1000));
        });
        Each("cautions", tables.Cautions, CautionMembers, (id, r) =>
        {
            var (text, source, when) = (r.TextPair("text"), sources.Required(r), conditions.Read(r));
            return source is null ? null : new Caution(id, text, source, when);
        });
        Each("set-ups", tables.SetUps, SetUpMembers, (id, r) => new SetUp(
            id, r.Text("name"), r.Whole("order", 0, 1000), r.Whole("minutes", 0, 120),
            r.Ids("includes", tables.SetUps, emptyIsFine: true), r.OneOf<DoneBy>("doneBy", FormatWords.DoneBy, DoneBy.Owner),
            r.Flag("raises"), r.Flag("drives"),
            r.Ids("cautions", tables.Cautions, emptyIsFine: true))
        {
            Without = r.Ids("without", tables.Symptoms),
        });

        void Each<T>(string kind, Table<T> table, string[] members, Func<string, EntryReader, T?> bind)
            where T : class
        {
            foreach (var (id, node) in declared[kind])
            {
                var reader = new EntryReader(node, table.Noun, members, problems);
                table.Bind(id, bind(id, reader));
                tables.AddImpliedBy(table, id, reader.Texts("impliedBy"));
            }
        }
    }

    private Position Position(string id, EntryReader reader)
    {
        var parts = reader.Ids("parts", tables.Positions);
        if (!reader.Has("parts"))
            reader.Refuse(ErrorCode.MissingMember, "parts", "'parts' is missing; a single wheel position names itself");
        return new Position(id, parts, reader.Texts("phrases"));
    }

    private Ageing Ageing(string id, EntryReader reader)
    {
        reader.Text("name");
        sources.Required(reader);
        return new Ageing(id, Points(reader, "odometerKm"), Points(reader, "ageYears"));
    }

    private List<(double At, double Factor)> Points(EntryReader reader, string member)
    {
        var points = new List<(double At, double Factor)>();
        foreach (var item in reader.Items(member))
        {
            if (item is not ListNode { Items: [var first, var second] })
            {
                problems.Add(ErrorCode.WrongShape, item.Place, $"a point of '{member}' is a pair such as [10, 1]");
                continue;
            }

            if (reader.Number(first, $"a point of '{member}'", 0) is not { } at || reader.Number(second, "a factor", 0.001, 1000) is not { } factor)
                continue;
            if (points.Count > 0 && at <= points[^1].At)
                problems.Add(ErrorCode.OutOfRange, item.Place, $"the points of '{member}' must ascend");
            points.Add((at, factor));
        }

        return points;
    }
}
