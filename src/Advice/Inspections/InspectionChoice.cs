using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Conditions;
using Advice.Ranking;
using Advice.Steps;
using Advice.Suspects;

namespace Advice.Inspections;

/// <summary>Which checks make up the inspection of a vehicle: every one that applies to it, or the most useful within the minutes.</summary>
internal sealed class InspectionChoice(Catalogue catalogue)
{
    private const double ShortTime = 20;
    private const int TriedInFront = 8;

    private readonly SharedSetUps _setUps = new(catalogue.SetUps);
    private readonly Check[] _checks = [.. catalogue.Checks.Values.OrderBy(check => check.Id, StringComparer.Ordinal)];

    /// <summary>The steps in order of work.</summary>
    /// <param name="case">The case.</param>
    /// <param name="faults">Every fault that the vehicle can have.</param>
    /// <param name="raised">What the case itself raised.</param>
    /// <param name="mayDrive">Whether checks on the road are allowed.</param>
    public ChosenSteps Choose(Case @case, IReadOnlyList<Suspect> faults, IReadOnlyList<Suspect> raised, bool mayDrive)
    {
        var indices = faults.Index().ToDictionary(one => one.Item.Instance.Fault.Id, one => one.Index);
        var options = Options(@case, indices, mayDrive);
        var weights = faults.Select(suspect => suspect.Probability * suspect.Instance.Fault.Consequence.Harm).ToArray();
        var chosen = Within(@case, options, weights, raised, indices).Take(@case.MostSteps).ToList();
        var byId = options.ToDictionary(option => option.Check.Id);
        var steps = chosen.ToDictionary(one => one.Id, one => Step(byId[one.Id].Check, one, @case, faults, indices));
        var walked = OrderOfWork.Plan([.. chosen.Select(one => steps[one.Id].Work)]).SelectMany(visit => visit.Checks);
        return new ChosenSteps(
            [.. walked.Select(id => steps[id])],
            new(() => [.. options.Select(option => option.Check.Id).Where(id => !steps.ContainsKey(id))]));
    }

    /// <summary>The checks that apply and were not done, by id: nothing that the vehicle lacks, nothing that looks only for faults it cannot have.</summary>
    public IReadOnlyList<InspectionOption> Options(Case @case, IReadOnlyDictionary<string, int> faults, bool mayDrive) =>
    [
        .. _checks.Where(check => @case.IsOpen(check) && (mayDrive || !check.Needs.Any(need => need.Drives))
                && check.Detects.Any(detects => faults.ContainsKey(detects.Fault))
                && VehicleFit.Share(catalogue.FitsByCheck[check.Id], @case.Vehicle) > 0)
            .Select(check => new InspectionOption(check, _setUps.Of(check), new Candidate(check.Id, check.Minutes, Detections(check, faults, @case)))),
    ];

    private Detection[] Detections(Check check, IReadOnlyDictionary<string, int> faults, Case @case) =>
    [
        .. check.Detects.Select(detects => detects.Fault).Distinct().Where(faults.ContainsKey)
            .Select(fault => new Detection(faults[fault], catalogue.Surely(check, fault, @case.Vehicle))).OrderBy(detection => detection.Cause),
    ];

    /// <summary>What fits into the minutes. What cannot be done here costs no time here; within a budget it stays only where the case asks for it.</summary>
    private IEnumerable<RankedCheck> Within(
        Case @case, IReadOnlyList<InspectionOption> options, double[] weights, IReadOnlyList<Suspect> raised, Dictionary<string, int> indices)
    {
        var (workshop, most) = (@case.Workshop, @case.MostSteps);
        var asked = new AskedFirst(raised, indices, weights.Length);
        if (workshop.Minutes is not { } minutes)
            return most >= options.Count ? All(options, weights) : Rank(options, weights, asked, double.PositiveInfinity, most);
        var here = options.ToLookup(option => workshop.CanDo(option.Check));
        return Rank([.. here[true]], weights, asked, minutes, most)
            .Concat(Rank([.. here[false].Where(asked.Concerns)], weights, asked, double.PositiveInfinity, most));
    }

    /// <summary>
    /// Short checks first can leave too little time for one that finds more than all of them. Where the time is short, each one and each two of
    /// those that find most are tried in front, and what finds most in all counts.
    /// </summary>
    private IReadOnlyList<RankedCheck> Rank(IReadOnlyList<InspectionOption> options, double[] weights, AskedFirst asked, double minutes, int most)
    {
        var first = asked.Among(options, _setUps).ToList();
        IReadOnlyList<RankedCheck> Try(params ReadOnlySpan<int> next) => new InspectionRanking(_setUps, options, new HarmLeft(weights), minutes).Rank(first, most, next);
        var densest = Try();
        if (minutes > ShortTime)
            return densest;
        var places = Enumerable.Range(0, TriedInFront);
        return places.SelectMany(one => places.Select(other => Try(one, other)).Prepend(Try(one))).Prepend(densest)
            .MaxBy(ranked => Math.Round(ranked.Sum(check => check.HarmFound), 9))!;
    }

    /// <summary>Where all are asked for there is nothing to choose: each by what it finds alone.</summary>
    private static IEnumerable<RankedCheck> All(IReadOnlyList<InspectionOption> options, double[] weights)
    {
        var left = new HarmLeft(weights);
        return options.Select(option => (option.Check, Found: left.FoundBy(option.Candidate)))
            .Select(one => new RankedCheck(one.Check.Id, one.Found, one.Found / one.Check.Minutes, false))
            .OrderByDescending(one => Math.Round(one.HarmPerMinute, 9)).ThenBy(one => one.Id, StringComparer.Ordinal);
    }

    private Step Step(Check check, RankedCheck ranked, Case @case, IReadOnlyList<Suspect> faults, Dictionary<string, int> indices)
    {
        var suspects = check.Detects.Select(detects => detects.Fault).Distinct().Where(indices.ContainsKey).Select(fault => faults[indices[fault]])
            .OrderByDescending(suspect => Math.Round(suspect.Probability * suspect.Instance.Fault.Consequence.Harm, 9))
            .ThenBy(suspect => suspect.Instance.Fault.Id, StringComparer.Ordinal).ToList();
        var onlyIf = VehicleFit.OnlyIf(catalogue.FitsByCheck[check.Id], @case.Vehicle);
        if (onlyIf is null && suspects.TrueForAll(suspect => suspect.Instance.OnlyIf is not null))
            onlyIf = suspects.FirstOrDefault()?.Instance.OnlyIf;
        return new Step(check, ranked, onlyIf, suspects);
    }
}
