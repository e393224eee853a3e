using Advice.Documents.Judgements;
using Advice.Documents.Requests;
using Advice.Knowledge;
using Advice.Wear;

namespace Advice.Judging;

/// <summary>Projects the wear of a part that was measured three times or more, from the findings of one request.</summary>
public sealed class FindingTrend(Catalogue catalogue)
{
    // Two readings need the error of the gauge, which a finding does not name.
    private const int Fewest = 3;

    private readonly WearLimits _limits = new(catalogue);

    /// <summary>When the first limit is reached, beside the last of the readings; null beside the others and where there are too few.</summary>
    /// <param name="finding">A finding.</param>
    /// <param name="request">The request that it stands in.</param>
    /// <param name="case">The day that counts, and the reader.</param>
    public LimitProjectionDocument? Of(FindingReport finding, AdviceRequest request, Case @case)
    {
        var readings = request.Findings.Where(one => one.Check == finding.Check && one.Position == finding.Position)
            .Where(one => one is { Value: not null, On: not null, Odometer: not null }).OrderBy(one => one.On).ToList();
        if (readings.Count < Fewest || !ReferenceEquals(readings[^1], finding))
            return null;
        var projected = new ProjectionRequest
        {
            AsOf = @case.AsOf,
            Jurisdiction = request.Jurisdiction,
            Vehicle = request.Vehicle,
            Check = finding.Check,
            Position = finding.Position,
            Limit = finding.Limit,
            Measurements = [.. readings.Select(one => new MeasurementReport { Value = one.Value!.Value, Unit = one.Unit!, On = one.On!.Value, Odometer = one.Odometer! })],
        };
        return _limits.Of(projected, WearLimits.Case(projected, @case.AsOf)) is [var first, ..]
            ? first.Written(@case.AsOf, readings[0].Odometer!.Unit, saying => catalogue.Say(@case.Workshop.Reader, saying)) : null;
    }
}
