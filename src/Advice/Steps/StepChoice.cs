using Advice.Knowledge;
using Advice.Ranking;
using Advice.Suspects;

namespace Advice.Steps;

/// <summary>From suspects to steps: the checks that find most of the harm that the case raised, per minute.</summary>
public sealed class StepChoice(Catalogue catalogue)
{
    private readonly Finders _finders = new(catalogue);

    /// <summary>The steps, best first, as many as the case asks for. A check that was done is not advised again.</summary>
    /// <param name="case">The case.</param>
    /// <param name="suspicion">What is suspected.</param>
    /// <param name="mayDrive">Whether checks on the road are allowed.</param>
    public ChosenSteps Choose(Case @case, Suspicion suspicion, bool mayDrive)
    {
        var raised = suspicion.Raised;
        var weights = raised.Select(suspect => suspect.Weight).ToList();
        var options = Options(@case, raised, mayDrive);
        var ranked = HarmFoundRanking.GreedyWithLift(weights, options, [.. Enumerable.Range(0, raised.Count).Where(i => raised[i].IsUrgent)]);
        var affordable = Affordable(ranked, weights, options, @case.Workshop);
        var steps = affordable.Take(@case.MostSteps).Select(one => Step(one, @case, raised)).ToList();
        return new ChosenSteps(steps, [.. ranked.Select(one => one.Id).Except(steps.Select(step => step.Check.Id))]);
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

    /// <summary>The checks still to be done that can find something, by id.</summary>
    private List<CheckOption> Options(Case @case, IReadOnlyList<Suspect> raised, bool mayDrive)
    {
        bool IsOpen(Check check) => @case.IsOpen(check) && (mayDrive || !check.Needs.Any(need => need.Drives));
        var found = new List<Detection>?[_finders.Checks.Count];
        var shares = new double?[_finders.Needs.Count];
        foreach (var (cause, suspect) in raised.Index())
        {
            foreach (var (check, need, surely) in _finders.Of(suspect.Instance.Fault.Id))
            {
                var share = shares[need] ??= _finders.Needs[need].Share(@case.Vehicle);
                if (surely * share > 0)
                    (found[check] ??= []).Add(new Detection(cause, surely * share));
            }
        }

        return
        [
            .. _finders.Checks.Zip(found).Where(one => one.Second is not null && IsOpen(one.First))
                .Select(one => new CheckOption(one.First.Id, Minutes(one.First), one.Second!)),
        ];
    }
}
