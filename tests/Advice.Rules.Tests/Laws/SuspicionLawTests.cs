using Advice.Evidence;
using Advice.Inference;
using Advice.Intake;
using Advice.Knowledge;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;
using Advice.Suspects;
using Advice.Symptoms;
using CsCheck;
using Xunit.Abstractions;

namespace Advice.Rules.Tests.Laws;

/// <summary>What one report more may do to the probabilities, by the repository's rules.</summary>
public class SuspicionLawTests(ITestOutputHelper output)
{
    private static readonly Catalogue Known = RepositoryRules.Book.Catalogue;
    private static readonly Suspecting Suspecting = new(Known);
    private static readonly CaseReader Reader = new(Known, new ComplaintReader([], [], []));

    /// <summary>Signs that imply others or are implied: to deny one says something of the others too.</summary>
    private static readonly HashSet<Sign> Related = [.. Known.Rules.Values.OfType<ImpliesRule>().SelectMany(rule => new[] { rule.Sign, rule.Implied })];

    private static readonly IReadOnlyList<ShowsRule> Shows =
        [.. Known.Rules.Values.OfType<ShowsRule>().Where(rule => rule.Sign.Kind == SignKind.Symptom && !Related.Contains(rule.Sign)).OrderBy(rule => rule.Id, StringComparer.Ordinal)];

    private static readonly Gen<Case> Case = RandomRequests.Any.Select(request => Reader.Read(request, request.AsOf!.Value).Case);

    [Fact]
    public void Suspect_OnlyDenials_OddsAreThoseBeforeTimesOneMinusStrengthOfEach()
    {
        var denied = 0;
        Case.Sample(
            @case =>
            {
                var (evidence, suspicion) = Solve(@case with { Codes = [], Outcomes = [], Reports = [.. @case.Reports.Select(report => report with { Present = false }).Distinct()] });
                foreach (var suspect in suspicion.All)
                {
                    var silent = suspect.Instance.Links.GroupBy(link => link.Seen).Aggregate(1.0, (product, links) => product * (1 - links.Max(link => link.Strength)));
                    AssertFactor(suspect.Instance.Prior, suspect.Probability, silent);
                }

                Interlocked.Add(ref denied, evidence.Links.Count);
            },
            iter: 200);
        output.WriteLine($"{denied} links denied");
        Assert.True(denied > 1000);
    }

    /// <summary>Between faults that share a sign a denial may move odds by more or less; once the others are known it does not.</summary>
    [Fact]
    public void Suspect_OtherFaultsKnown_DenialMultipliesOddsByOneMinusStrength()
    {
        var touched = 0;
        Gen.Select(Case, Gen.Int).Sample(
            (@case, seed) =>
            {
                var before = Solve(@case).Suspicion;
                var world = new Random(seed);
                // A symptom of which nobody spoke and that one of the suspects shows.
                var suspected = before.All.Select(suspect => suspect.Instance.Fault.Id).ToHashSet();
                var shown = Shows.Where(rule => suspected.Contains(rule.Fault) && @case.Reports.All(report => report.Symptom != rule.Sign.Id)).ToList();
                if (shown.Count == 0)
                    return;
                var symptom = shown[world.Next(shown.Count)].Sign.Id;
                var (evidence, after) = Solve(@case with { Reports = [.. @case.Reports, new Report(symptom, [], null, false)] });
                var there = after.All.ToDictionary(Name, _ => world.Next(4) == 0 ? 1.0 : 0.0);
                foreach (var suspect in before.All)
                {
                    var strength = evidence.Links.Where(link => link.Fault == suspect.Instance.Fault.Id && link.Seen.Sign == Sign.Symptom(symptom))
                        .Select(link => link.Strength).DefaultIfEmpty().Max();
                    if (strength > 0 && Interlocked.Increment(ref touched) > 0)
                        AssertFactor(Given(before, suspect, there), Given(after, suspect, there), 1 - strength);
                }
            },
            iter: 300);
        output.WriteLine($"{touched} faults denied a sign");
        Assert.True(touched > 100);
    }

    [Fact]
    public void Suspect_OneSymptomMore_FaultsWithoutAPathToItKeepTheirProbability()
    {
        var (kept, moved) = (0, 0);
        Gen.Select(Case, RandomRequests.Symptom).Sample(
            (@case, symptom) =>
            {
                var earlier = Solve(@case).Suspicion;
                var before = earlier.All.ToDictionary(Name);
                var after = Solve(@case with { Reports = [.. @case.Reports, new Report(symptom, [], null, true)] }).Suspicion;
                var changed = after.All.Where(suspect => !before.TryGetValue(Name(suspect), out var old) || !Same(old.Instance, suspect.Instance))
                    .Select(suspect => suspect.Instance.Fault.Id)
                    .Concat(before.Values.Select(old => old.Instance.Fault.Id).Except(after.All.Select(suspect => suspect.Instance.Fault.Id)));
                // A symptom may also take a link away, so that the path was there before, or what made another sign nothing unusual.
                var reached = Reached(changed.Concat(Unusual(earlier, after)), earlier, after);
                foreach (var suspect in after.All.Where(suspect => !reached.Contains(suspect.Instance.Fault.Id)))
                {
                    Assert.Equal(before[Name(suspect)].Probability, suspect.Probability, 1e-12);
                    Interlocked.Increment(ref kept);
                }

                Interlocked.Add(ref moved, reached.Count);
            },
            iter: 300);
        output.WriteLine($"{kept} faults kept their probability, {moved} had a path to what was added");
        Assert.True(kept > 1000 && moved > 1000);
    }

    private static (CaseEvidence Evidence, Suspicion Suspicion) Solve(Case @case)
    {
        var evidence = RepositoryRules.Book.Open(@case).Gather();
        return (evidence, Suspecting.Suspect(@case, evidence));
    }

    private static (string Fault, string? Place) Name(Suspect suspect) => (suspect.Instance.Fault.Id, suspect.Instance.Place);

    /// <summary>Faults that show a sign of which it changed how often it is there without any of them.</summary>
    private static IEnumerable<string> Unusual(Suspicion before, Suspicion after) =>
        from sign in after.Network.Manifestations
        where before.Network.Manifestations.Any(old => old.Id == sign.Id && old.Present && sign.Present && old.Leak != sign.Leak)
        from link in sign.Links
        select after.All[link.Cause].Instance.Fault.Id;

    /// <summary>Whether nothing is said of the fault now that was not said before.</summary>
    private static bool Same(FaultInstance a, FaultInstance b) =>
        a.Prior == b.Prior && a.Links.Select(link => (link.Seen, link.Rule)).ToHashSet().SetEquals(b.Links.Select(link => (link.Seen, link.Rule)));

    /// <summary>Probability of one suspect where it is known of all others whether they are there.</summary>
    private static double Given(Suspicion suspicion, Suspect suspect, Dictionary<(string, string?), double> there)
    {
        var at = suspicion.All.Index().Single(one => Name(one.Item) == Name(suspect)).Index;
        return ExactInference.Solve(suspicion.Network with
        {
            Priors = [.. suspicion.All.Select((other, i) => i == at ? other.Instance.Prior : there[Name(other)])],
        }).Probabilities[at];
    }

    private static void AssertFactor(double before, double after, double factor) =>
        Assert.InRange(after / (before * factor / (1 - before + before * factor)), 1 - 1e-9, 1 + 1e-9);

    /// <summary>Faults that share a sign that is there with one of these, directly or through others.</summary>
    private static HashSet<string> Reached(IEnumerable<string> from, params Suspicion[] suspicions)
    {
        var reached = from.ToHashSet();
        var shared = suspicions.SelectMany(suspicion => suspicion.Network.Manifestations.Where(sign => sign.Present)
            .Select(sign => sign.Links.Select(link => suspicion.All[link.Cause].Instance.Fault.Id).ToHashSet())).ToList();
        while (shared.FirstOrDefault(faults => faults.Overlaps(reached) && !faults.IsSubsetOf(reached)) is { } faults)
            reached.UnionWith(faults);
        return reached;
    }
}
