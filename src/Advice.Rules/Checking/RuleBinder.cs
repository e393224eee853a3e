using Advice.Knowledge;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;

namespace Advice.Rules.Checking;

/// <summary>Binds the seven kinds of rule.</summary>
internal sealed class RuleBinder(Tables tables, SourceBinder sources, ConditionBinder conditions, Problems problems)
{
    private static readonly string[] Common = ["id", "vehicle", "because", "plain", "source"];
    private static readonly string[] Shows = [.. Common, "fault", "symptom", "code", "occasions", "without", "often"];
    private static readonly string[] Prone = [.. Common, "fault", "faults", "service", "odds"];
    private static readonly string[] Service = ["item", "olderThanYears", "olderThanKm", "withinYears", "withinKm"];
    private static readonly string[] Fits = [.. Common, "faults", "checks", "services", "onlyIf"];
    private static readonly string[] Implies = [.. Common, "symptom", "code", "occasions", "without", "implies"];
    private static readonly string[] Trigger = [.. Common, "symptom", "symptoms", "fault", "probability", "occasions", "without"];
    private static readonly string[] Warns = [.. Trigger, "check", "checks", "caution"];
    private static readonly string[] Driving = [.. Trigger, "advice"];
    private static readonly string[] Normal = ["id", "vehicle", "symptom", "occasions", "without", "share", "text", "plain", "source"];

    /// <summary>Binds all rules.</summary>
    public void BindAll(Declarations declared)
    {
        Each("shows", Shows, BindShows);
        Each("prone", Prone, BindProne);
        Each("fits", Fits, BindFits);
        Each("implies", Implies, BindImplies);
        Each("warns", Warns, BindWarns);
        Each("driving", Driving, BindDriving);
        Each("normal", Normal, BindNormal);

        void Each(string kind, string[] members, Func<string, EntryReader, Rule> bind)
        {
            foreach (var (id, node) in declared[kind])
                tables.Rules.Bind(id, bind(id, new EntryReader(node, $"'{kind}' rule", members, problems)));
        }
    }

    private ShowsRule BindShows(string id, EntryReader reader)
    {
        var sign = Sign(reader);
        return new ShowsRule(
            id, reader.Id("fault", tables.Faults), sign, Occasions(reader), Without(reader, sign.Id),
            reader.OneOf<double>("often", FormatWords.Often), conditions.Read(reader), reader.TextPair("because"), sources.Required(reader));
    }

    private ProneRule BindProne(string id, EntryReader reader)
    {
        if (ConditionBinder.AsksNothing(reader) && !reader.Has("service"))
            reader.Refuse(ErrorCode.AsksNothing, "id", $"the rule '{id}' needs a 'vehicle' or a 'service' condition; without one it belongs into the prior");
        var odds = reader.Number("odds", 0.05, 20);
        if (odds == 1)
            reader.Refuse(ErrorCode.AsksNothing, "odds", "odds of 1 change nothing");
        return new ProneRule(
            id, Named(reader, reader.OneOrMore("fault", "faults", tables.Faults), "fault", "faults"), ServiceTest(reader), odds,
            conditions.Read(reader), reader.TextPair("because"), sources.Required(reader));
    }

    private ServiceTest? ServiceTest(EntryReader rule)
    {
        if (rule.Inner("service", "service condition", Service) is not { } reader)
            return null;
        var test = new ServiceTest(
            reader.Id("item", tables.Services), reader.NumberOrNull("olderThanYears", 0), reader.NumberOrNull("olderThanKm", 0),
            reader.NumberOrNull("withinYears", 0), reader.NumberOrNull("withinKm", 0));
        if (!Service[1..].Any(reader.Has))
            rule.Refuse(ErrorCode.MissingMember, "service", $"a service condition needs one of {string.Join(", ", Service[1..])}");
        return test;
    }

    private FitsRule BindFits(string id, EntryReader reader)
    {
        var rule = new FitsRule(
            id, reader.Ids("faults", tables.Faults), reader.Ids("checks", tables.Checks), reader.Ids("services", tables.Services),
            reader.Text("onlyIf"), conditions.Read(reader), reader.TextPair("because"), sources.Optional(reader));
        if (!reader.Has("faults") && !reader.Has("checks") && !reader.Has("services"))
            reader.Refuse(ErrorCode.MissingMember, "id", $"the rule '{id}' names no faults, checks or services");
        if (ConditionBinder.AsksNothing(reader))
            reader.Refuse(ErrorCode.AsksNothing, "vehicle", $"the rule '{id}' needs a 'vehicle' condition; without one it excludes nothing");
        return rule;
    }

    private ImpliesRule BindImplies(string id, EntryReader reader)
    {
        var sign = Sign(reader);
        var implied = tables.Codes.Contains((reader.Raw("implies") as Files.ScalarNode)?.Value ?? "")
            ? Knowledge.Signs.Sign.Code(reader.Id("implies", tables.Codes))
            : Knowledge.Signs.Sign.Symptom(reader.Id("implies", tables.Symptoms));
        return new ImpliesRule(
            id, sign, implied, Occasions(reader), Without(reader, sign.Id), conditions.Read(reader), reader.TextPair("because"),
            sources.Optional(reader));
    }

    private WarnsRule BindWarns(string id, EntryReader reader)
    {
        var symptoms = reader.OneOrMore("symptom", "symptoms", tables.Symptoms);
        var checks = reader.OneOrMore("check", "checks", tables.Checks);
        var (fault, probability) = Suspected(reader);
        OneTrigger(id, reader, ["symptom", "symptoms", "check", "checks", "fault"]);
        return new WarnsRule(
            id, symptoms, checks, fault, probability, reader.Id("caution", tables.Cautions), Occasions(reader),
            Without(reader, [.. symptoms]), conditions.Read(reader), reader.TextPairOrEmpty("because"), sources.Optional(reader));
    }

    private DrivingRule BindDriving(string id, EntryReader reader)
    {
        var symptoms = reader.OneOrMore("symptom", "symptoms", tables.Symptoms);
        var (fault, probability) = Suspected(reader);
        OneTrigger(id, reader, ["symptom", "symptoms", "fault"]);
        return new DrivingRule(
            id, symptoms, fault, probability, reader.OneOf<DrivingAdvice>("advice", FormatWords.Driving), Occasions(reader),
            Without(reader, [.. symptoms]), conditions.Read(reader), reader.TextPair("because"), sources.Optional(reader));
    }

    private NormalRule BindNormal(string id, EntryReader reader)
    {
        var symptom = reader.Id("symptom", tables.Symptoms);
        var share = reader.Number("share", 0, 1);
        if (share == 1)
            reader.Refuse(ErrorCode.OutOfRange, "share", "a share of 1 would deny every fault; it must be below 1");
        return new NormalRule(
            id, symptom, Occasions(reader), Without(reader, symptom), share, conditions.Read(reader), reader.TextPair("text"), sources.Required(reader));
    }

    private Sign Sign(EntryReader reader)
    {
        if (reader.Has("symptom") == reader.Has("code"))
            reader.Refuse(ErrorCode.ChooseOne, "id", "the rule has exactly one of 'symptom' and 'code'");
        if (!reader.Has("code"))
            return Knowledge.Signs.Sign.Symptom(reader.IdOrNull("symptom", tables.Symptoms) ?? "");
        foreach (var member in new[] { "occasions", "without" })
        {
            if (reader.Has(member))
                reader.Refuse(ErrorCode.UnfitMember, member, $"a trouble code has no '{member}'; leave it out");
        }

        return Knowledge.Signs.Sign.Code(reader.Id("code", tables.Codes));
    }

    private (string? Fault, double Probability) Suspected(EntryReader reader)
    {
        if (reader.Has("fault") != reader.Has("probability"))
            reader.Refuse(ErrorCode.UnfitMember, reader.Has("fault") ? "fault" : "probability", "'fault' and 'probability' go together: once the fault is at least that likely");
        return (reader.IdOrNull("fault", tables.Faults), reader.Has("probability") ? reader.Share("probability") : 0);
    }

    private static void OneTrigger(string id, EntryReader reader, string[] members)
    {
        var given = members.Count(reader.Has);
        if (given == 0 || (given > 1 && members.GroupBy(m => m.TrimEnd('s')).Count(group => group.Any(reader.Has)) > 1))
            reader.Refuse(ErrorCode.ChooseOne, "id", $"the rule '{id}' has exactly one of {string.Join(", ", members)}");
        if (reader.Has("symptom") || reader.Has("symptoms"))
            return;
        foreach (var member in new[] { "occasions", "without" })
        {
            if (reader.Has(member))
                reader.Refuse(ErrorCode.UnfitMember, member, $"'{member}' goes with a symptom only; leave it out");
        }
    }

    private static IReadOnlyList<string> Named(EntryReader reader, IReadOnlyList<string> ids, string singular, string plural)
    {
        if (!reader.Has(singular) && !reader.Has(plural))
            reader.Refuse(ErrorCode.MissingMember, "id", $"the rule names no '{singular}'");
        return ids;
    }

    private IReadOnlyList<string> Occasions(EntryReader reader) => reader.Ids("occasions", tables.Occasions);

    private IReadOnlyList<string> Without(EntryReader reader, params string[] own)
    {
        var without = reader.Ids("without", tables.Symptoms);
        foreach (var symptom in without)
        {
            if (own.Contains(symptom))
                reader.Refuse(ErrorCode.ExcludesItself, "without", $"the rule asks for '{symptom}' and for its absence, so it could never apply");
        }

        return without;
    }
}
