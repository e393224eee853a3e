using Advice.Documents.Judgements;
using Advice.Documents.Requests;
using Advice.Findings;
using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Signs;
using Advice.Knowledge.Words;

namespace Advice.Judging;

/// <summary>Says what one finding means: measured values against limits, observations by their scale.</summary>
public sealed class FindingJudge(Catalogue catalogue, LimitChoice limits)
{
    private readonly FindingArithmetic _arithmetic = new(catalogue);
    private readonly VerdictWriter _writer = new(catalogue);

    /// <summary>Judges a finding whose ids, units and values were checked.</summary>
    public Judged Judge(FindingReport finding, Case @case)
    {
        var check = catalogue.Checks[finding.Check];
        return finding.Observation is { } observation
            ? Observed(check, finding, observation, @case.Workshop.Reader)
            : Measured(check, finding, @case);
    }

    private Judged Observed(Check check, FindingReport finding, string value, Audience reader)
    {
        var observation = check.Observations.First(one => one.Id == value);
        var deficiency = observation.Normal ? Deficiency.None : observation.Deficiency ?? Shown(check, value);
        var judgement = new JudgementDocument
        {
            Check = check.Id,
            Position = finding.Position,
            Judged = true,
            Deficiency = deficiency,
            Action = catalogue.Say(reader, DeficiencyWords.Action(deficiency)),
            Limit = observation.Text,
            Source = check.Id,
        };
        return new Judged(judgement, new Outcome(check.Id, finding.Position, observation.Normal ? null : value, deficiency));
    }

    /// <summary>The class of the fault that shows most surely in this value.</summary>
    private Deficiency Shown(Check check, string value)
    {
        var shown = check.Detects.Where(detects => detects.Value is null || detects.Value == value)
            .OrderByDescending(detects => detects.Surely).ThenBy(detects => detects.Fault, StringComparer.Ordinal).FirstOrDefault();
        return shown is null ? Deficiency.Minor : catalogue.Faults[shown.Fault].Deficiency;
    }

    private Judged Measured(Check check, FindingReport finding, Case @case)
    {
        var corrected = _arithmetic.AtLimit(finding, @case);
        var (value, unit) = corrected is { Value: { } at } ? (at, corrected.Unit ?? finding.Unit!) : (finding.Value!.Value, finding.Unit!);
        @case = @case with { Vehicle = CarriedFacts.Vehicle(catalogue, finding, @case.Vehicle) };
        var ours = Verdicts.Of(limits.For(check, finding.Position, @case).Select(limit => LimitVerdict.Of(limit, value, unit)));
        var verdicts = finding.Limit is { } supplied ? Verdicts.WonBy(LimitVerdict.Of(limits.Supplied(check, supplied), value, unit), ours) : ours;
        if (verdicts is null)
            return new Judged(NotJudged(check, finding, @case.Workshop.Reader), null);

        var deficiency = verdicts.Decisive.Deficiency;
        return new Judged(
            Noting(_writer.Write(check.Id, finding.Position, verdicts, @case), corrected is not null, @case.Workshop.Reader),
            new Outcome(check.Id, finding.Position, deficiency >= Deficiency.Minor ? Sign.BeyondLimit : null, deficiency));
    }

    private JudgementDocument Noting(JudgementDocument judgement, bool corrected, Audience reader) => !corrected ? judgement
        : judgement.Noting(catalogue.Say(reader, Sentences.AtTemperature, FormattableString.Invariant($"{judgement.Value} {judgement.Unit}")));

    private JudgementDocument NotJudged(Check check, FindingReport finding, Audience reader) => new()
    {
        Check = check.Id,
        Position = finding.Position,
        Judged = false,
        Note = catalogue.Say(reader, Sentences.NoLimit, FormattableString.Invariant($"{finding.Value} {finding.Unit}")),
    };
}
