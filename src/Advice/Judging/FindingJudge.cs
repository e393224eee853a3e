using System.Globalization;
using Advice.Documents;
using Advice.Findings;
using Advice.Knowledge;
using Advice.Vehicles;

namespace Advice.Judging;

/// <summary>Says what one finding means: measured values against limits, observations by their scale.</summary>
public sealed class FindingJudge(Catalogue catalogue, LimitChoice limits)
{
    /// <summary>Judges a finding whose ids, units and values were checked.</summary>
    public Judged Judge(FindingReport finding, Vehicle vehicle, string? jurisdiction)
    {
        var check = catalogue.Checks[finding.Check];
        return finding.Observation is { } observation
            ? Observed(check, finding, observation)
            : Measured(check, finding, finding.Value!.Value, vehicle, jurisdiction);
    }

    private Judged Observed(Check check, FindingReport finding, string value)
    {
        var observation = check.Observations.First(one => one.Id == value);
        var shown = check.Detects.Where(detects => detects.Value is null || detects.Value == value)
            .OrderByDescending(detects => detects.Surely).ThenBy(detects => detects.Fault, StringComparer.Ordinal).ToList();
        var deficiency = observation.Normal ? Deficiency.None
            : shown.Count == 0 ? Deficiency.Minor
            : catalogue.Faults[shown[0].Fault].Deficiency;
        var judgement = new JudgementDocument
        {
            Check = check.Id,
            Position = finding.Position,
            Judged = true,
            Deficiency = deficiency,
            Limit = observation.Text,
            Action = ActionWords.For(deficiency),
            Source = check.Id,
        };
        return new Judged(judgement, new Outcome(check.Id, finding.Position, observation.Normal ? null : value, deficiency));
    }

    private Judged Measured(Check check, FindingReport finding, double value, Vehicle vehicle, string? jurisdiction)
    {
        var verdicts = TradeBesideLaw(
            [.. limits.For(check, finding, vehicle, jurisdiction).Select(limit => LimitVerdict.Of(limit, value, finding.Unit!))]);
        if (verdicts.Count == 0)
            return new Judged(NotJudged(check, finding), null);

        // A worse class decides; among equals the limit that is closest to being passed, relative to its size.
        var decisive = verdicts.OrderByDescending(verdict => verdict.Deficiency).ThenBy(verdict => verdict.RelativeMargin)
            .ThenBy(verdict => verdict.Limit.Id, StringComparer.Ordinal).First();
        var judgement = new JudgementDocument
        {
            Check = check.Id,
            Position = finding.Position,
            Judged = true,
            Deficiency = decisive.Deficiency,
            Limit = decisive.Limit.Text.Trade,
            Margin = Math.Round(decisive.Margin, 4),
            Unit = decisive.Limit.Unit,
            Source = decisive.Limit.Source.ToString(),
            Action = ActionWords.For(decisive.Deficiency),
        };
        var beyond = decisive.Deficiency >= Deficiency.Minor;
        return new Judged(judgement, new Outcome(check.Id, finding.Position, beyond ? Sign.BeyondLimit : null, decisive.Deficiency));
    }

    /// <summary>Where the law has a limit and it is met, advice of the trade alone makes no more than a minor deficiency.</summary>
    private static IReadOnlyList<LimitVerdict> TradeBesideLaw(IReadOnlyList<LimitVerdict> verdicts)
    {
        var legal = verdicts.Where(verdict => verdict.Limit.Jurisdiction is not null).ToList();
        return legal.Count == 0 || legal.Exists(verdict => verdict.Deficiency > Deficiency.None) ? verdicts
            : [.. verdicts.Select(verdict => verdict.Deficiency > Deficiency.Minor ? verdict with { Deficiency = Deficiency.Minor } : verdict)];
    }

    private static JudgementDocument NotJudged(Check check, FindingReport finding) => new()
    {
        Check = check.Id,
        Position = finding.Position,
        Judged = false,
        Note = string.Create(CultureInfo.InvariantCulture,
            $"No limit for {finding.Value} {finding.Unit} is known here; give the maker's or the one stamped on the part as limit."),
    };
}
