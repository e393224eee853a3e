using Advice.Documents;
using Advice.Documents.Judgements;
using Advice.Documents.Requests;
using Advice.Findings;
using Advice.Intake;
using Advice.Judging;
using Advice.Knowledge;
using Advice.Knowledge.Limits;
using Advice.Rules.Tests.Laws;
using CsCheck;
using Check = Advice.Knowledge.Checks.Check;

namespace Advice.Rules.Tests.Judging;

/// <summary>What holds of every measured check, on every vehicle, under every law.</summary>
public class JudgingLawTests
{
    private static readonly DateOnly Today = new(2026, 3, 1);
    private static readonly Catalogue Known = RepositoryRules.Book.Catalogue;
    private static readonly FindingsReader Findings = new(Known);
    private static readonly Check[] Measured = [.. Known.Checks.Values.Where(check => check.Measure is not null).OrderBy(check => check.Id, StringComparer.Ordinal)];
    private static readonly string?[] Jurisdictions = [null, .. Known.Jurisdictions.Keys.Order(StringComparer.Ordinal)];

    private static readonly Gen<(VehicleDescription Vehicle, string? Jurisdiction, double A, double B)> Any = Gen.Select(
        RandomRequests.Vehicle, Gen.Int[14, 22], Gen.Int[0, Jurisdictions.Length - 1], Gen.Double[0, 1], Gen.Double[0, 1],
        (vehicle, inches, law, a, b) => (
            vehicle with { Steering = new SteeringDescription { WheelDiameter = new Quantity { Value = inches, Unit = "in" } } }, Jurisdictions[law], a, b));

    /// <summary>The worse of two values is never in a milder class: the smaller where limits are minima, the larger where they are maxima.</summary>
    [Fact]
    public void Judge_MoreWear_NeverAMilderClass() => Any.Sample(any =>
    {
        foreach (var check in Measured)
        {
            var (least, most) = (check.Measure!.PlausibleMinimum, check.Measure.PlausibleMaximum);
            var (low, high) = (least + (Math.Min(any.A, any.B) * (most - least)), least + (Math.Max(any.A, any.B) * (most - least)));
            var limits = Known.LimitsByCheck[check.Id].Where(limit => limit.AcrossAxle is null).ToList();
            var (atLow, atHigh) = (Class(check, low, check.Measure.Unit, any), Class(check, high, check.Measure.Unit, any));
            if (limits.TrueForAll(limit => limit.Maximum is null))
                Assert.True(atLow >= atHigh, $"{check.Id}: {low} is {atLow}, {high} is {atHigh}");
            else if (limits.TrueForAll(limit => limit.Minimum is null))
                Assert.True(atHigh >= atLow, $"{check.Id}: {low} is {atLow}, {high} is {atHigh}");
        }
    });

    /// <summary>Also at the very value of each limit, where rounding would show.</summary>
    [Fact]
    public void Judge_ValueInAnotherUnit_SameClassAndMargin() => Any.Sample(any =>
    {
        foreach (var check in Measured)
        {
            var measure = check.Measure!;
            var values = Known.LimitsByCheck[check.Id].Where(limit => limit is { AcrossAxle: null, Times: null })
                .SelectMany(limit => new[] { limit.Minimum, limit.Maximum }.OfType<double>().Select(bound => UnitConversion.Convert(bound, limit.Unit, measure.Unit)!.Value))
                .Append(measure.PlausibleMinimum + (any.A * (measure.PlausibleMaximum - measure.PlausibleMinimum)));
            foreach (var value in values)
            {
                foreach (var unit in UnitConversion.Accepted(measure.Unit))
                {
                    var other = UnitConversion.Convert(value, measure.Unit, unit)!.Value;
                    var (own, converted) = (Judgement(check, value, measure.Unit, any), Judgement(check, other, unit, any));
                    Assert.True(own.Deficiency == converted.Deficiency && own.Limit == converted.Limit, $"{check.Id}: {value} {measure.Unit}, {other} {unit}");
                    Assert.Equal(own.Margin ?? 0, converted.Margin ?? 0, 3);
                }
            }
        }
    });

    private static Deficiency Class(Check check, double value, string unit, (VehicleDescription, string?, double, double) any) =>
        Judgement(check, value, unit, any).Deficiency ?? Deficiency.None;

    private static JudgementDocument Judgement(Check check, double value, string unit, (VehicleDescription Vehicle, string? Jurisdiction, double, double) any) =>
        Findings.Read([new FindingReport { Check = check.Id, Value = value, Unit = unit }], new Case { AsOf = Today, Vehicle = VehicleReader.Read(any.Vehicle, Today), Jurisdiction = any.Jurisdiction })
            .Judgements[0];
}
