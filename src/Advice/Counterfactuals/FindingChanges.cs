using System.Text.Json.Nodes;
using Advice.Documents;
using Advice.Documents.Requests;
using Advice.Findings;
using Advice.Judging;
using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Words;

namespace Advice.Counterfactuals;

/// <summary>What checks would find if a fault were there.</summary>
internal sealed class FindingChanges(Catalogue catalogue)
{
    /// <summary>By how much a limit is passed, of all values that are possible.</summary>
    private const double Beyond = 0.01;

    private const int MostChecks = 6;

    private readonly LimitChoice _limits = new(catalogue);

    /// <summary>The findings, of the surest checks that are still to be done.</summary>
    public IEnumerable<Change> Of(string fault, Case @case) => catalogue.ChecksByFault[fault]
        .Where(check => @case.IsOpen(check) && !check.ReadsCodes && VehicleFit.Share(catalogue.FitsByCheck[check.Id], @case.Vehicle) > 0)
        .OrderByDescending(check => check.Surely(fault)).ThenBy(check => check.Id, StringComparer.Ordinal).Take(MostChecks)
        .SelectMany(check => check.Measure is null ? Observed(check, fault, @case) : Measured(check, @case));

    private static IEnumerable<Change> Observed(Check check, string fault, Case @case)
    {
        var values = check.Detects.Where(detects => detects.Fault == fault).Select(detects => detects.Value).ToHashSet();
        return check.Abnormal.Where(one => values.Contains(null) || values.Contains(one.Id)).Select(one => Of(
            new FindingReport { Check = check.Id, Position = Place(check), Observation = one.Id },
            $"{check.Title.For(@case.Workshop.Reader)}: {one.Text}", ("observation", one.Id)));
    }

    private IEnumerable<Change> Measured(Check check, Case @case)
    {
        var (position, span) = (Place(check), check.Measure!.PlausibleMaximum - check.Measure.PlausibleMinimum);
        var bounds = _limits.For(check, position, @case).OrderByDescending(limit => limit.Deficiency).ThenBy(limit => limit.Id, StringComparer.Ordinal).Take(1)
            .SelectMany(limit => new[] { (Value: limit.Minimum, limit.Unit, By: -Beyond), (Value: limit.Maximum, limit.Unit, By: Beyond) }).Where(bound => bound.Value is not null);
        foreach (var (bound, unit, by) in bounds)
        {
            var value = UnitConversion.Convert(new Quantity { Value = bound!.Value, Unit = unit }, check.Measure.Unit) + (by * span);
            if (value is { } beyond && beyond >= check.Measure.PlausibleMinimum && beyond <= check.Measure.PlausibleMaximum)
                yield return Value(check, position, Math.Round(beyond, 3), by < 0 ? Sentences.BelowSuchAs : Sentences.AboveSuchAs, FormattableString.Invariant($"{bound.Value:0.###} {unit}"), @case.Workshop.Reader);
        }
    }

    private static string? Place(Check check) => check.Places is [var first, ..] ? first : null;

    private Change Value(Check check, string? position, double value, Sentence beyond, string limit, Audience audience) => Of(
        new FindingReport { Check = check.Id, Position = position, Value = value, Unit = check.Measure!.Unit },
        $"{check.Title.For(audience)}: {catalogue.Say(audience, beyond, limit, FormattableString.Invariant($"{value} {check.Measure.Unit}"))}", ("value", value), ("unit", check.Measure.Unit));

    private static Change Of(FindingReport finding, string text, params (string Name, JsonNode Value)[] members)
    {
        var json = new JsonObject { ["check"] = finding.Check };
        if (finding.Position is { } position)
            json["position"] = position;
        foreach (var (name, value) in members)
            json[name] = value;
        return new Change(ChangeKind.Finding, finding.Check, text, "/findings/-", json, request => request with { Findings = [.. request.Findings, finding] });
    }
}
