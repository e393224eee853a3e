using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Conditions;
using Advice.Ranking;
using Advice.Suspects;
using Advice.Symptoms;

namespace Advice.Steps;

/// <summary>From suspects to steps: the checks that find most of the harm that the case raised, per minute.</summary>
public sealed class StepChoice(Catalogue catalogue)
{
    private readonly Finders _finders = new(catalogue);
    private readonly HashSet<string> _forbidding = [.. catalogue.Checks.Values.SelectMany(check => check.Without)];

    /// <summary>The steps, best first, as many as the case asks for. A check that was done is not advised again.</summary>
    /// <param name="case">The case.</param>
    /// <param name="suspicion">What is suspected.</param>
    /// <param name="mayDrive">Whether checks on the road are allowed.</param>
    public ChosenSteps Choose(Case @case, Suspicion suspicion, bool mayDrive) => Choose(@case, suspicion, On(@case), mayDrive);

    /// <summary>The same where some of that is known.</summary>
    internal ChosenSteps Choose(Case @case, Suspicion suspicion, ChecksInCase known, bool mayDrive)
    {
        var raised = suspicion.Raised;
        var (weights, finders) = (Weights(raised), _finders.Of(raised));
        var candidates = Candidates(finders, known, mayDrive);
        var ranked = HarmFoundRanking.GreedyWithLift(weights, candidates, Urgent(raised));
        var affordable = Affordable(ranked, weights, candidates, @case.Workshop);
        var steps = Steps([.. affordable.Take(@case.MostSteps)], @case, raised, finders);
        return new ChosenSteps(steps, new(() => [.. ranked.Select(one => one.Id).Where(id => !steps.Exists(step => step.Check.Id == id))]));
    }

    /// <summary>The first of the steps that can be done here, else the first of all; null where there is none.</summary>
    /// <param name="case">The case.</param>
    /// <param name="suspicion">What is suspected.</param>
    /// <param name="known">What it says of checks.</param>
    /// <param name="mayDrive">Whether checks on the road are allowed.</param>
    internal Check? First(Case @case, Suspicion suspicion, ChecksInCase known, bool mayDrive)
    {
        if (@case.Workshop.Minutes is null)
        {
            var first = First(suspicion.Raised, known, mayDrive);
            if (first is null || @case.Workshop.CanDo(first))
                return first;
        }

        var checks = Choose(@case, suspicion, known, mayDrive).Steps.Select(step => step.Check).ToList();
        return checks.Find(@case.Workshop.CanDo) ?? checks.FirstOrDefault();
    }

    /// <summary>The first of the ranking. Where nothing is urgent that is the check that finds most per minute, for which no ranking is needed.</summary>
    private Check? First(IReadOnlyList<Suspect> raised, ChecksInCase known, bool mayDrive)
    {
        var (weights, finders, urgent) = (Weights(raised), _finders.Of(raised), Urgent(raised));
        if (urgent.Length > 0)
            return HarmFoundRanking.FirstWithLift(weights, Candidates(finders, known, mayDrive), urgent) is { } first ? catalogue.Checks[first.Id] : null;
        var found = new double[_finders.Checks.Length];
        for (var cause = 0; cause < weights.Length; cause++)
        {
            foreach (var finder in finders[cause])
                found[finder.Check] += weights[cause] * (finder.Surely * known.Share(finder.Need));
        }

        return HarmFoundRanking.MostPerMinute(found, _finders.Minutes, check => MayBeDone(check, known, mayDrive)) is { } most ? _finders.Checks[most] : null;
    }

    /// <summary>What a case says of checks, to be reckoned when first asked for.</summary>
    internal ChecksInCase On(Case @case) => new(_finders.Needs, _finders.Checks, @case);

    /// <summary>What a case with one more report says of checks: the same, unless the report forbids some.</summary>
    internal ChecksInCase With(Report report, Case @case, ChecksInCase known) => report.Present && _forbidding.Contains(report.Symptom) ? On(@case.With(report)) : known;

    private static double[] Weights(IReadOnlyList<Suspect> raised) => [.. raised.Select(suspect => suspect.Weight)];

    private static int[] Urgent(IReadOnlyList<Suspect> raised) => [.. raised.Index().Where(one => one.Item.IsUrgent).Select(one => one.Index)];

    /// <summary>What cannot be done here costs no time here and stays.</summary>
    private IEnumerable<RankedCheck> Affordable(
        IEnumerable<RankedCheck> ranked, IReadOnlyList<double> weights, List<Candidate> candidates, Workshop workshop)
    {
        if (workshop.Minutes is not { } minutes)
            return ranked;
        var here = candidates.FindAll(candidate => workshop.CanDo(catalogue.Checks[candidate.Id]));
        List<RankedCheck> all = [.. ranked];
        var fitting = TimeBudget.Fitting(all, weights, here, minutes);
        return [.. all.Where(one => fitting.Contains(one.Id) || !workshop.CanDo(catalogue.Checks[one.Id]))];
    }

    private List<Step> Steps(IReadOnlyList<RankedCheck> ranked, Case @case, IReadOnlyList<Suspect> raised, Finder[][] finders)
    {
        var suspects = new List<Suspect>?[_finders.Checks.Length];
        foreach (var one in ranked)
            suspects[_finders.NumberOf(one.Id)] = [];
        for (var cause = 0; cause < raised.Count; cause++)
        {
            foreach (var finder in finders[cause])
            {
                if (finder.Surely > 0)
                    suspects[finder.Check]?.Add(raised[cause]);
            }
        }

        return [.. ranked.Select(one => Step(one, @case, [.. suspects[_finders.NumberOf(one.Id)]!.OrderByDescending(suspect => Math.Round(suspect.Weight, 9))]))];
    }

    private Step Step(RankedCheck ranked, Case @case, IReadOnlyList<Suspect> suspects)
    {
        var check = catalogue.Checks[ranked.Id];
        var onlyIf = VehicleFit.OnlyIf(catalogue.FitsByCheck[check.Id], @case.Vehicle);
        if (onlyIf is null && suspects.All(suspect => suspect.Instance.OnlyIf is not null))
            onlyIf = suspects is [var heaviest, ..] ? heaviest.Instance.OnlyIf : null;
        return new Step(check, ranked, onlyIf, suspects);
    }

    /// <summary>The checks still to be done that can find something, by id.</summary>
    private List<Candidate> Candidates(Finder[][] finders, ChecksInCase known, bool mayDrive)
    {
        var counts = Counts(finders, known);
        var detections = new Detection[]?[counts.Length];
        var candidates = new List<Candidate>();
        for (var check = 0; check < counts.Length; check++)
        {
            if (counts[check] == 0 || !MayBeDone(check, known, mayDrive))
                continue;
            detections[check] = new Detection[counts[check]];
            candidates.Add(new Candidate(_finders.Checks[check].Id, _finders.Minutes[check], detections[check]!));
        }

        // From the last cause to the first, so that the counts run down to the first place of each check.
        for (var cause = finders.Length - 1; cause >= 0; cause--)
        {
            foreach (var finder in finders[cause])
            {
                if (detections[finder.Check] is { } own && finder.Surely * known.Share(finder.Need) is > 0 and var surely)
                    own[--counts[finder.Check]] = new Detection(cause, surely);
            }
        }

        return candidates;
    }

    private bool MayBeDone(int check, ChecksInCase known, bool mayDrive) => known.IsOpen(check) && (mayDrive || !_finders.Drives[check]);

    /// <summary>How many causes each check can find on this vehicle.</summary>
    private int[] Counts(Finder[][] finders, ChecksInCase known)
    {
        var counts = new int[_finders.Checks.Length];
        foreach (var own in finders)
        {
            foreach (var finder in own)
            {
                if (finder.Surely * known.Share(finder.Need) > 0)
                    counts[finder.Check]++;
            }
        }

        return counts;
    }
}
