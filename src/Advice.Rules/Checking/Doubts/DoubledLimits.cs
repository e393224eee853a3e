using Advice.Documents;
using Advice.Findings;
using Advice.Knowledge.Limits;

namespace Advice.Rules.Checking.Doubts;

/// <summary>Limits that another one doubles: it says the same, or is at least as strict wherever they apply. A laxer one of a
/// better source is no doubt: that sources differ is worth showing.</summary>
internal sealed class DoubledLimits(Tables tables, Problems doubts)
{
    private const int Digits = 9;

    /// <summary>Checks the limits of each check; those of different law never double each other.</summary>
    public void Check()
    {
        foreach (var group in tables.Limits.Bound.GroupBy(limit => (limit.Check, limit.Jurisdiction, limit.AcrossAxle, limit.Times, limit.Means)))
        {
            List<Limit> limits = [.. group];
            foreach (var (at, limit) in limits.Index())
            {
                if (limits.Take(at).FirstOrDefault(other => Covers(other, limit) && Covers(limit, other)) is { } twin)
                    doubts.Add(WarningCode.SaysAgain, tables.Limits.PlaceOf(limit.Id), $"the limit '{limit.Id}' says again what '{twin.Id}' says: same check, law, vehicles and class; keep one");
                else if (limits.Find(other => other != limit && Covers(other, limit) && !Covers(limit, other) && other.Source.Grade <= limit.Source.Grade) is { } other)
                    doubts.Add(WarningCode.SwallowedRule, tables.Limits.PlaceOf(limit.Id), $"the limit '{limit.Id}' never decides: '{other.Id}' applies wherever it does, is passed as soon and weighs as much or more");
            }
        }
    }

    private bool Covers(Limit wide, Limit narrow) =>
        wide.Deficiency >= narrow.Deficiency && (wide.Position is null || wide.Position == narrow.Position)
        && Conditions.AreWithin(narrow.When.Tests, wide.When.Tests)
        && (narrow.Minimum is null || In(wide, wide.Minimum) >= In(narrow, narrow.Minimum)) && (narrow.Maximum is null || In(wide, wide.Maximum) <= In(narrow, narrow.Maximum));

    /// <summary>A bound in the unit of the check.</summary>
    private double? In(Limit limit, double? bound) => bound is not { } value ? null
        : UnitConversion.Convert(new Quantity { Value = value, Unit = limit.Unit }, Unit(limit)) is { } same ? Math.Round(same, Digits) : null;

    private string Unit(Limit limit) => limit.AcrossAxle is null && tables.Checks.TryGet(limit.Check, out var check) && check.Measure is { } measure ? measure.Unit : limit.Unit;
}
