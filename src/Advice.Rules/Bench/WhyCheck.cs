using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Conditions;

namespace Advice.Rules.Bench;

/// <summary>How a check came to its rank in a case, or why it is not advised.</summary>
public sealed class WhyCheck(Catalogue catalogue, Advised all, int mostSteps)
{
    /// <summary>What it would find, what it costs, and where that puts it.</summary>
    public IEnumerable<string> Of(string id)
    {
        var check = catalogue.Checks[id];
        yield return $"check {id}: {check.Title.Trade}";
        yield return $"  takes {check.Minutes} min{string.Concat(check.Needs.Select(need => $" + {need.Minutes} {need.Id}"))} = {check.Minutes + check.Needs.Sum(need => need.Minutes)} min";
        var share = VehicleFit.Share(catalogue.FitsByCheck[id], all.Case.Vehicle);
        if (share < 1)
            yield return $"  {Wording.Number(share)} of such vehicles have what it looks at";
        var left = new HarmLeft(catalogue, all);
        foreach (var (rank, step) in all.Steps.Index())
        {
            if (step.Check.Id == id)
            {
                foreach (var line in Found(check, left))
                    yield return line;
                yield return $"  rank {rank + 1}: {Why.Key(step)}{(rank >= mostSteps ? $"; the case asks for {mostSteps} steps" : "")}";
                yield break;
            }

            left.Take(step.Check);
        }

        foreach (var line in Found(check, left))
            yield return line;
        yield return $"  not advised: {Reason(check, share)}";
    }

    private static IEnumerable<string> Found(Check check, HarmLeft left) => left.FoundBy(check).Select(one =>
        $"  {Why.Name(one.Suspect)}: weight {Why.Fixed(one.Suspect.Weight)}, left by the steps before {Why.Fixed(one.Left)} × surely {Wording.Number(one.Surely)} = {Why.Fixed(one.Left * one.Surely)}");

    private string Reason(Check check, double share)
    {
        var @case = all.Case;
        return @case.Outcomes.Any(outcome => outcome.Check == check.Id) ? "it was done"
            : share == 0 ? "this vehicle has not what it looks at"
            : !all.Suspicion.Raised.Any(suspect => check.Surely(suspect.Instance.Fault.Id) > 0) ? $"it finds no suspect of this case, only {string.Join(", ", check.Detects.Select(detects => detects.Fault).Distinct())}"
            : check.ReadsCodes && @case.Codes.Count > 0 ? "it reads trouble codes, and the caller gave some"
            : @case.Forbids(check) is { } symptom ? $"it is not done with {symptom}"
            : check.Needs.Any(need => need.Drives) && !all.Steps.Any(step => step.Check.Needs.Any(need => need.Drives)) ? "it needs a drive, which the advice forbids"
            : @case.Workshop.Minutes is { } minutes ? $"other checks find more in the {minutes} min that there are"
            : "the steps before it leave nothing for it to find";
    }
}
