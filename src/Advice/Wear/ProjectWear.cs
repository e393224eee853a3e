using Advice.Answers;
using Advice.Documents;
using Advice.Documents.Judgements;
using Advice.Documents.Requests;
using Advice.Evidence;
using Advice.Knowledge.Words;

namespace Advice.Wear;

/// <summary>Answers when a wearing part reaches the limits that apply to it.</summary>
internal sealed class ProjectWear(IRuleBook rules, OverlayWriter overlays)
{
    private readonly WearLimits _limits = new(rules.Catalogue);

    /// <summary>Answers a request whose shape, ranges and ids were checked.</summary>
    /// <param name="request">The request.</param>
    /// <param name="today">The day that counts where the request names none.</param>
    public ProjectionDocument Of(ProjectionRequest request, DateOnly today)
    {
        var asOf = request.AsOf ?? today;
        var @case = WearLimits.Case(request, asOf);
        var reckoned = _limits.Of(request, @case);
        var unit = request.Measurements[0].Odometer.Unit;
        return new ProjectionDocument
        {
            AsOf = asOf,
            RuleSet = RuleSetStamp.Of(rules),
            Check = request.Check,
            Position = request.Position,
            KmPerDay = reckoned.Select(one => one.Trend).FirstOrDefault(trend => trend.Band is not null) is { } trend ? Math.Round(trend.KmPerDay, 1) : null,
            Limits = [.. reckoned.Select(one => one.Written(asOf, unit, Say))],
            Notes = Notes(request, reckoned.Count),
            Plot = request.Plot == true && reckoned.FirstOrDefault(one => one.Trend.Band is not null) is { } shown ? WearPlot.Of(shown.Trend, shown.Bound, shown.Limit.Unit, shown.Result) : null,
            FromOverlays = overlays.Write(request, @case),
        };
    }

    private List<string> Notes(ProjectionRequest request, int limits)
    {
        var notes = new List<Saying> { new(Sentences.WearGoesOn) };
        if (limits == 0)
            notes.Add(new(Sentences.NoLimitOfWear));
        if (request.New is not null)
            notes.Add(new(Sentences.NewCounts));
        return [.. notes.Select(Say)];
    }

    private string Say(Saying saying) => rules.Catalogue.Say(Audience.Technician, saying);
}
