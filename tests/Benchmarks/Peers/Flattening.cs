using Advice;
using Advice.Evidence;
using Advice.Knowledge;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Signs;

namespace Benchmarks.Peers;

/// <summary>Cases as flat requests, with the names of the rules that our session finds to hold.</summary>
internal static class Flattening
{
    public static FlatRequest Of(Asked asked, IRuleBook rules)
    {
        var (@case, known) = (asked.Case, rules.Catalogue);
        var session = rules.Open(@case);
        var evidence = session.Gather();
        var reported = Reported(@case, known).ToList();
        var signs = reported.Concat(evidence.Implied.Select(one => one.Implied)).Distinct().ToList();
        var words = known.Facts.Values.Where(fact => fact.Kind != FactKind.Number).ToDictionary(fact => fact.Id, fact => @case.Vehicle.Word(fact.Id) ?? "?");
        var numbers = known.Facts.Values.Where(fact => fact.Kind == FactKind.Number).ToDictionary(fact => fact.Id, fact => @case.Vehicle.Number(fact.Id) ?? FlatRequest.Unknown);
        foreach (var (fault, probability) in asked.Suspected)
            numbers[$"suspected:{fault}"] = probability;
        foreach (var (item, done) in @case.Services)
        {
            if (done.On is { } on)
                numbers[$"years:{item}"] = (@case.AsOf.DayNumber - on.DayNumber) / 365.25;
            if (@case.Vehicle.Number("odometerKm") - done.OdometerKm is { } km)
                numbers[$"km:{item}"] = km;
        }

        return new FlatRequest(
            new Dictionary<string, HashSet<string>>
            {
                ["seen"] = [.. signs.SelectMany(sign => Keys(sign, known))],
                ["there"] = [.. signs.Where(sign => sign.Present).SelectMany(sign => Keys(sign, known))],
                ["told"] = [.. reported.Where(sign => sign.Present).SelectMany(sign => Keys(sign, known))],
                ["linked"] = [.. evidence.Links.Select(link => link.Fault)],
                ["advised"] = [.. asked.Advised],
                ["unknown"] = [.. words.Where(word => word.Value == "?").Select(word => word.Key)],
            },
            words, numbers, Names(asked, session, evidence));
    }

    private static List<string> Names(Asked asked, IRuleSession session, CaseEvidence evidence) =>
    [
        .. evidence.Links.Select(link => link.Seen.Sign.Kind == SignKind.Outcome ? $"{link.Rule}={link.Seen.Sign.Value}:{link.Fault}" : link.Rule)
            .Concat(evidence.Factors.Select(one => $"{one.Rule.Id}:{one.Fault}")).Concat(evidence.Implied.Select(one => one.Rule.Id))
            .Concat(evidence.Normals.Select(one => one.Rule.Id)).Concat(session.LimitDriving(asked.Suspected).Select(rule => rule.Id))
            .Concat(session.Caution(asked.Advised).Select(rule => rule.Id)).Distinct().Order(StringComparer.Ordinal),
    ];

    /// <summary>"sign" fits rules without occasions, "sign@occasion" those with that one, "sign@" those with any but events alone.</summary>
    private static IEnumerable<string> Keys(SeenSign sign, Catalogue known)
    {
        if (sign.Present || sign.Occasions.Count == 0)
            yield return $"{sign.Sign}";
        if (sign.Occasions.All(one => known.Occasions[one].IsEvent))
            yield return $"{sign.Sign}@";
        foreach (var occasion in known.Occasions.Keys.Where(one => sign.Occasions.Any(stated => known.OccasionFits(stated, one))))
            yield return $"{sign.Sign}@{occasion}";
    }

    private static IEnumerable<SeenSign> Reported(Case @case, Catalogue known) => Advice.Rules.Tests.Oracles.PlainLoop.Reported(@case, known);
}
