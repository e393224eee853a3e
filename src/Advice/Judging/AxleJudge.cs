using Advice.Documents.Requests;
using Advice.Findings;
using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Limits;

namespace Advice.Judging;

/// <summary>Compares left and right on an axle as soon as both were measured.</summary>
public sealed class AxleJudge(Catalogue catalogue, LimitChoice limits)
{
    private static readonly (string Axle, string Left, string Right)[] Axles =
        [("front", "front-left", "front-right"), ("rear", "rear-left", "rear-right")];

    private readonly VerdictWriter _writer = new(catalogue);

    /// <summary>One judgement for each check and axle with a value on both sides and a limit on their difference, in the order of the checks.</summary>
    /// <param name="findings">Findings whose ids, units and values were checked.</param>
    /// <param name="case">The vehicle, the law and the reader.</param>
    public IReadOnlyList<Judged> Judge(IReadOnlyList<FindingReport> findings, Case @case) =>
    [
        .. findings.Where(finding => finding.Value is not null).GroupBy(finding => finding.Check)
            .SelectMany(measured => Axles.Select(axle => Judge(catalogue.Checks[measured.Key], axle.Axle, Last(measured, axle.Left), Last(measured, axle.Right), @case)))
            .OfType<Judged>(),
    ];

    private Judged? Judge(Check check, string axle, FindingReport? left, FindingReport? right, Case @case)
    {
        if (left is null || right is null
            || Verdicts.Of(limits.AcrossAxle(check, axle, @case).Select(limit => LimitVerdict.Of(limit, Apart(limit, check, left, right)))) is not { } verdicts)
            return null;
        var (limit, deficiency) = (verdicts.Decisive.Limit, verdicts.Decisive.Deficiency);
        var means = deficiency > Deficiency.None ? limit.Means : null;
        return new Judged(
            _writer.Write(check.Id, axle, verdicts, @case), means is { } sign ? new Outcome(sign.Id, axle, sign.Value, deficiency) : null);
    }

    private static double Apart(Limit limit, Check check, FindingReport left, FindingReport right)
    {
        var unit = limit.AcrossAxle == AxleComparison.Share ? check.Measure!.Unit : limit.Unit;
        var (a, b) = (UnitConversion.Convert(left.Value!.Value, left.Unit!, unit)!.Value, UnitConversion.Convert(right.Value!.Value, right.Unit!, unit)!.Value);
        var (apart, larger) = (Math.Abs(a - b), Math.Max(Math.Abs(a), Math.Abs(b)));
        return limit.AcrossAxle != AxleComparison.Share ? apart : larger > 0 ? apart / larger * 100 : 0;
    }

    private static FindingReport? Last(IEnumerable<FindingReport> findings, string position) =>
        findings.Where(finding => finding.Position == position).OrderBy(finding => finding.On ?? DateOnly.MaxValue).LastOrDefault();
}
