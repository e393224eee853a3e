using Advice.Knowledge;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;
using Advice.Rules.Bench.Conditions;

namespace Advice.Rules.Tests.Bench;

public class ConditionCoverageTests
{
    private static readonly Catalogue Catalogue = RepositoryRules.Book.Catalogue;

    [Fact]
    public void Conditions_NoCase_AreAllThereAndUnseen()
    {
        var conditions = new ConditionCoverage(Catalogue, []).Conditions;

        Assert.Equal(Catalogue.Rules.Keys.Order(StringComparer.Ordinal), conditions.Select(one => one.Rule).Distinct().Order(StringComparer.Ordinal));
        Assert.All(conditions, condition => Assert.False(condition.Fired || condition.Missed));
    }

    [Fact]
    public void Rules_InEveryCase_FireWhereAllTheirConditionsHoldAndOnlyThere()
    {
        var rules = Catalogue.Rules.Values.Where(rule => rule is not FitsRule).Select(rule => ConditionalRule.Of(rule, Catalogue)).ToList();

        Assert.All(RepositoryCases.Sample.Select(one => new CaseSight(one.Advised, Catalogue)), sight => Assert.Equal(
            rules.Where(rule => rule.Conditions.Aggregate(1.0, (share, condition) => share * condition.In(sight).Share) >= rule.Least).Select(rule => rule.Rule.Id),
            rules.Where(rule => sight.Fired(rule.Rule)).Select(rule => rule.Rule.Id)));
    }

    [Fact]
    public void Conditions_OneWayEach_AreSeenBothWaysTogether()
    {
        var shows = Catalogue.Rules.Values.OfType<ShowsRule>().Where(rule => rule.Sign.Kind == SignKind.Symptom && rule.Occasions.Count == 1 && rule.Without.Count == 0 && rule.When.Tests.Count == 0)
            .OrderBy(rule => rule.Id, StringComparer.Ordinal).First();
        var other = Catalogue.Occasions.Keys.Order(StringComparer.Ordinal).First(id => !Catalogue.OccasionFits(id, shows.Occasions[0]));
        var (fitting, elsewhere, nothing) = (On(shows, shows.Occasions), On(shows, [other]), On(shows, []));

        Assert.Equal([(true, false), (true, false)], Seen(shows, fitting));
        Assert.Equal([(false, false), (false, true)], Seen(shows, elsewhere));
        Assert.Equal([(true, false), (false, false)], Seen(shows, nothing));
        Assert.Equal((true, true), Seen(shows, fitting, elsewhere)[1]);
    }

    private static Advised On(ShowsRule rule, IReadOnlyList<string> occasions) => new Assessment(RepositoryRules.Book).Of(new Case
    {
        AsOf = new(2026, 3, 1),
        Vehicle = Vehicles.Vehicle.Unknown,
        Reports = [new(rule.Sign.Id, occasions, null, true)],
    });

    private static IReadOnlyList<(bool Fired, bool Missed)> Seen(Rule rule, params Advised[] cases) =>
        [.. new ConditionCoverage(Catalogue, cases).Conditions.Where(one => one.Rule == rule.Id).Select(one => (one.Fired, one.Missed))];
}
