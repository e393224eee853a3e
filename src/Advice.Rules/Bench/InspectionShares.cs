using Advice.Evidence;
using Advice.Inspections;
using Advice.Steps;

namespace Advice.Rules.Bench;

/// <summary>
/// Weighs what an inspection within some minutes finds: Σ over faults probability · harm · (1 − Π (1 − surely)), against a sheet of
/// all checks in order of work that is stopped when the time is up.
/// </summary>
public sealed class InspectionShares(IRuleBook rules)
{
    private readonly InspectionAssessment _inspection = new(rules);

    /// <summary>The shares of each budget.</summary>
    /// <param name="case">The vehicle and what is known of it; what its workshop can do stays, its minutes do not count.</param>
    /// <param name="budgets">The times, min.</param>
    public IReadOnlyList<InspectionShare> Of(Case @case, IEnumerable<int> budgets)
    {
        var sheet = Steps(@case, null);
        var whole = Harm(sheet, @case);
        return
        [
            .. budgets.Select(minutes => new InspectionShare(
                minutes, Harm(Steps(@case, minutes), @case) / whole, Harm(Stopped(sheet, minutes), @case) / whole)),
        ];
    }

    private IReadOnlyList<Step> Steps(Case @case, int? minutes) =>
        _inspection.Of(@case with { MostSteps = int.MaxValue, Workshop = @case.Workshop with { Minutes = minutes } }).Steps;

    /// <summary>The checks that are done when the time is up, each set-up arranged once.</summary>
    private static List<Step> Stopped(IReadOnlyList<Step> sheet, int minutes)
    {
        var (done, arranged, left) = (new List<Step>(), new HashSet<string>(), minutes);
        foreach (var step in sheet)
        {
            left -= step.Check.Minutes + step.Check.Needs.Where(need => arranged.Add(need.Id)).Sum(need => need.Minutes);
            if (left < 0)
                break;
            done.Add(step);
        }

        return done;
    }

    private double Harm(IEnumerable<Step> steps, Case @case)
    {
        var (harm, missed) = (new SortedDictionary<string, double>(StringComparer.Ordinal), new Dictionary<string, double>());
        foreach (var step in steps)
        {
            foreach (var suspect in step.Suspects)
            {
                var fault = suspect.Instance.Fault;
                harm[fault.Id] = suspect.Probability * fault.Consequence.Harm;
                missed[fault.Id] = missed.GetValueOrDefault(fault.Id, 1) * (1 - rules.Catalogue.Surely(step.Check, fault.Id, @case.Vehicle));
            }
        }

        return harm.Sum(one => one.Value * (1 - missed[one.Key]));
    }
}
