using System.Collections.Frozen;
using Advice.Knowledge;
using Advice.Ranking;
using Advice.Suspects;

namespace Advice.Steps;

/// <summary>From suspects to steps: the checks that find most of the harm that the case raised, per minute.</summary>
public sealed class StepChoice
{
    private const double UrgentProbability = 0.05;
    private const double UrgentRaise = 3;

    private readonly Catalogue _catalogue;
    private readonly Check[] _checks;
    private readonly FrozenDictionary<string, Finder[]> _finders;

    /// <summary>Chooses among the checks of a rule set.</summary>
    public StepChoice(Catalogue catalogue)
    {
        _catalogue = catalogue;
        _checks = [.. catalogue.Checks.Values.OrderBy(check => check.Id, StringComparer.Ordinal)];
        var places = _checks.Index().ToDictionary(one => one.Item.Id, one => one.Index);
        _finders = catalogue.Faults.Keys.ToFrozenDictionary(fault => fault, fault => Finder.Of(fault, places, catalogue));
    }

    /// <summary>The steps, best first, as many as the case asks for. A check that was done is not advised again.</summary>
    /// <param name="case">The case.</param>
    /// <param name="suspicion">What is suspected.</param>
    /// <param name="mayDrive">Whether checks on the road are allowed.</param>
    public ChosenSteps Choose(Case @case, Suspicion suspicion, bool mayDrive)
    {
        var raised = suspicion.Raised;
        var weights = raised.Select(suspect => suspect.Weight).ToList();
        var options = Options(@case, raised, mayDrive);
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
        var here = options.Where(option => workshop.CanDo(_catalogue.Checks[option.Id])).ToList();
        var fitting = TimeBudget.Fitting(ranked, weights, here, minutes);
        return [.. ranked.Where(one => fitting.Contains(one.Id) || !workshop.CanDo(_catalogue.Checks[one.Id]))];
    }

    private Step Step(RankedCheck ranked, Case @case, IReadOnlyList<Suspect> raised)
    {
        var check = _catalogue.Checks[ranked.Id];
        var suspects = raised.Where(suspect => check.Surely(suspect.Instance.Fault.Id) > 0)
            .OrderByDescending(suspect => Math.Round(suspect.Weight, 9)).ToList();
        var onlyIf = VehicleFit.OnlyIf(_catalogue.FitsByCheck[check.Id], @case.Vehicle);
        if (onlyIf is null && suspects.TrueForAll(suspect => suspect.Instance.OnlyIf is not null))
            onlyIf = suspects.FirstOrDefault()?.Instance.OnlyIf;
        return new Step(check, ranked, onlyIf, suspects);
    }

    // What a check costs where it stands alone: the ranking takes minutes as additive.
    private static double Minutes(Check check) => check.Minutes + check.Needs.Sum(need => need.Minutes);

    /// <summary>The checks still to be done that can find something, by id.</summary>
    private List<CheckOption> Options(Case @case, IReadOnlyList<Suspect> raised, bool mayDrive)
    {
        var done = @case.Outcomes.Select(outcome => outcome.Check).ToHashSet();
        bool IsOpen(Check check) => !done.Contains(check.Id) && !(check.ReadsCodes && @case.Codes.Count > 0)
            && (mayDrive || !check.Needs.Any(need => need.Drives));
        var found = new List<Detection>?[_checks.Length];
        var shares = new double[_checks.Length];
        foreach (var (cause, suspect) in raised.Index())
        {
            var fault = suspect.Instance.Fault.Id;
            foreach (var finder in _finders[fault])
            {
                var check = _checks[finder.Check];
                if (found[finder.Check] is null)
                {
                    found[finder.Check] = [];
                    shares[finder.Check] = VehicleFit.Share(_catalogue.FitsByCheck[check.Id], @case.Vehicle);
                }

                var surely = finder.Settled ? _catalogue.Surely(check, fault, @case.Vehicle) : finder.Surely * shares[finder.Check];
                if (surely > 0)
                    found[finder.Check]!.Add(new Detection(cause, surely));
            }
        }

        return [.. _checks.Zip(found).Where(one => one.Second is { Count: > 0 } && IsOpen(one.First))
            .Select(one => new CheckOption(one.First.Id, Minutes(one.First), one.Second!))];
    }

    private static bool IsUrgent(Suspect suspect) =>
        suspect.Instance.Fault.Deficiency == Deficiency.Dangerous && suspect.Probability >= UrgentProbability
        && suspect.Probability >= UrgentRaise * suspect.Instance.Prior;
}
