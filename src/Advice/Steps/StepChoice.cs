using Advice.Knowledge;
using Advice.Ranking;
using Advice.Suspects;

namespace Advice.Steps;

/// <summary>From suspects to steps: the checks that find most of the harm that the case raised, per minute.</summary>
public sealed class StepChoice(Catalogue catalogue)
{
    private const double UrgentProbability = 0.05;
    private const double UrgentRaise = 3;

    /// <summary>The steps, best first, as many as the case asks for. A check that was done is not advised again.</summary>
    /// <param name="case">The case.</param>
    /// <param name="suspicion">What is suspected.</param>
    /// <param name="mayDrive">Whether checks on the road are allowed.</param>
    public ChosenSteps Choose(Case @case, Suspicion suspicion, bool mayDrive)
    {
        var raised = suspicion.Raised;
        var done = @case.Outcomes.Select(outcome => outcome.Check).ToHashSet();
        bool IsOpen(Check check) => !done.Contains(check.Id) && !(check.ReadsCodes && @case.Codes.Count > 0)
            && (mayDrive || !check.Needs.Any(need => need.Drives));
        var weights = raised.Select(suspect => suspect.Weight).ToList();
        var options = raised.SelectMany(suspect => catalogue.ChecksByFault[suspect.Instance.Fault.Id]).DistinctBy(check => check.Id)
            .Where(IsOpen).OrderBy(check => check.Id, StringComparer.Ordinal)
            .Select(check => new CheckOption(check.Id, Minutes(check), Detections(check, raised, @case)))
            .Where(option => option.Detections.Count > 0).ToList();
        var ranked = HarmFoundRanking.GreedyWithLift(weights, options, [.. Enumerable.Range(0, raised.Count).Where(i => IsUrgent(raised[i]))]);
        var affordable = Affordable(ranked, weights, options, @case.Workshop);
        var steps = affordable.Take(@case.MostSteps).Select(one => Step(one, @case, raised)).ToList();
        return new ChosenSteps(steps, affordable.Count - steps.Count);
    }

    /// <summary>What cannot be done here costs no time here and stays.</summary>
    private IReadOnlyList<RankedCheck> Affordable(
        IReadOnlyList<RankedCheck> ranked, IReadOnlyList<double> weights, IReadOnlyList<CheckOption> options, Workshop workshop)
    {
        if (workshop.Minutes is not { } minutes)
            return ranked;
        var here = options.Where(option => workshop.CanDo(catalogue.Checks[option.Id])).ToList();
        var fitting = TimeBudget.Fitting(ranked, weights, here, minutes);
        return [.. ranked.Where(one => fitting.Contains(one.Id) || !workshop.CanDo(catalogue.Checks[one.Id]))];
    }

    private Step Step(RankedCheck ranked, Case @case, IReadOnlyList<Suspect> raised)
    {
        var check = catalogue.Checks[ranked.Id];
        var suspects = raised.Where(suspect => check.Surely(suspect.Instance.Fault.Id) > 0)
            .OrderByDescending(suspect => Math.Round(suspect.Weight, 9)).ToList();
        var onlyIf = VehicleFit.OnlyIf(catalogue.FitsByCheck[check.Id], @case.Vehicle);
        if (onlyIf is null && suspects.TrueForAll(suspect => suspect.Instance.OnlyIf is not null))
            onlyIf = suspects.FirstOrDefault()?.Instance.OnlyIf;
        return new Step(check, ranked, onlyIf, suspects);
    }

    // What a check costs where it stands alone: the ranking takes minutes as additive.
    private static double Minutes(Check check) => check.Minutes + check.Needs.Sum(need => need.Minutes);

    private List<Detection> Detections(Check check, IReadOnlyList<Suspect> raised, Case @case)
    {
        var detections = new List<Detection>();
        for (var i = 0; i < raised.Count; i++)
        {
            if (check.Surely(raised[i].Instance.Fault.Id) > 0 && catalogue.Surely(check, raised[i].Instance.Fault.Id, @case.Vehicle) is > 0 and var surely)
                detections.Add(new Detection(i, surely));
        }

        return detections;
    }

    private static bool IsUrgent(Suspect suspect) =>
        suspect.Instance.Fault.Deficiency == Deficiency.Dangerous && suspect.Probability >= UrgentProbability
        && suspect.Probability >= UrgentRaise * suspect.Instance.Prior;
}
