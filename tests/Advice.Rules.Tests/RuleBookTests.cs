using Advice.Rules.RuleSets;
using Advice.Symptoms;
using Advice.Vehicles;

namespace Advice.Rules.Tests;

public class RuleBookTests
{
    [Fact]
    public void Load_RepositoryRules_NothingIsWrong() =>
        Assert.Equal([], ErrorsOf(() => RuleSetLoader.Load(RepositoryRules.Directory)));

    [Fact]
    public void Load_Twice_GivesTheSameRevision() =>
        Assert.Equal(RuleSetLoader.Load(RepositoryRules.Directory).Revision, RuleSetLoader.Load(RepositoryRules.Directory).Revision);

    [Fact]
    public void Load_NoSuchFolder_NamesIt()
    {
        var error = Assert.Single(ErrorsOf(() => RuleSetLoader.Load(Path.Combine(RepositoryRules.Directory, "none"))), one => one.Contains("no such folder", StringComparison.Ordinal));
        Assert.Contains("none(1,1)", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("squeal", true)]
    [InlineData("squeal", false)]
    public void Gather_SquealWhenBraking_LinksUnevenDiscsByTheirRule(string symptom, bool present)
    {
        var evidence = RepositoryRules.Book.Open(CaseWith(new Report(symptom, ["braking"], null, present))).Gather();

        var link = Assert.Single(evidence.Links, link => link.Rule == "disc-uneven-squeal");
        Assert.Equal(("brake-disc-uneven", present), (link.Fault, link.Seen.Present));
    }

    [Fact]
    public void Gather_SquealWhenAccelerating_DoesNotLinkUnevenDiscs()
    {
        var evidence = RepositoryRules.Book.Open(CaseWith(new Report("squeal", ["accelerating"], null, true))).Gather();

        Assert.DoesNotContain(evidence.Links, link => link.Rule == "disc-uneven-squeal");
    }

    [Fact]
    public void LimitDriving_SinkingPedal_SaysStop()
    {
        var session = RepositoryRules.Book.Open(CaseWith(new Report("pedal-sinks", [], null, true)));
        session.Gather();

        Assert.Equal(Knowledge.DrivingAdvice.Stop, session.LimitDriving(new Dictionary<string, double>())[0].Advice);
    }

    private static Case CaseWith(params Report[] reports) =>
        new() { AsOf = new DateOnly(2026, 3, 1), Vehicle = Vehicle.Unknown, Reports = reports };

    private static IReadOnlyList<string> ErrorsOf(Action load) =>
        Record.Exception(load) is RuleSetException wrong ? [.. wrong.Errors.Select(error => error.ToString())] : [];
}
