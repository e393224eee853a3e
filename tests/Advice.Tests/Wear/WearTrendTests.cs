using Advice.Wear;

namespace Advice.Tests.Wear;

public class WearTrendTests
{
    private static readonly DateOnly Start = new(2024, 1, 1);

    /// <summary>Tread 8.0 mm at 0 and 5.0 mm at 30,000 km leaves 34,000 km to 1.6 mm; a pad from 12 to 7.5 mm in 36,000 km leaves 36,000 to 3 mm.</summary>
    [Theory]
    [InlineData(8.0, 5.0, 30_000, 1.6, 64_000)]
    [InlineData(12.0, 7.5, 36_000, 3.0, 72_000)]
    public void To_TwoReadings_IsLinearWear(double first, double second, double km, double limit, double reached)
    {
        var projection = Trend(0.2, (0, 0, first), (km, 365, second)).To(limit, wearsDown: true);

        Assert.Equal(ProjectionStatus.Projected, projection.Status);
        Assert.Equal(reached, projection.Expected!.Km, 0.5);
        Assert.True(projection.Earliest!.Km < reached && reached < projection.Latest!.Km);
        Assert.Equal(Start.AddDays((int)Math.Round(365 * reached / km)), projection.Expected.On);
    }

    /// <summary>10/32 in at 0 and 6/32 in at 24,000 miles: 24,000 miles more to 2/32.</summary>
    [Fact]
    public void To_InThirtySeconds_IsTheSameLine() =>
        Assert.Equal(48_000 * 1.609344, Trend(0.5, (0, 0, 10), (24_000 * 1.609344, 700, 6)).To(2, wearsDown: true).Expected!.Km, 0.5);

    /// <summary>Two readings: the error of the gauge, propagated by hand. Slope -3/30000, S = 30000² / 2, limit 1.6.</summary>
    [Fact]
    public void To_TwoReadings_PropagatesTheGauge()
    {
        var projection = Trend(0.2, (0, 0, 8), (30_000, 365, 5)).To(1.6, wearsDown: true);

        var (b, g, s, d) = (-1e-4, 0.2, 4.5e8, 4.9);
        var a = (b * b) - (g * g / s);
        var root = Math.Sqrt((d * b * d * b) - (a * ((d * d) - (g * g / 2))));
        Assert.Equal(15_000 + (((-d * b) - root) / a), projection.Earliest!.Km, 1.0);
        Assert.Equal(15_000 + (((-d * b) + root) / a), projection.Latest!.Km, 1.0);
    }

    [Fact]
    public void To_GrowingPlay_RunsUpwards()
    {
        var projection = WearTrend.Of(Readings((0, 0, 10), (20_000, 300, 20), (40_000, 600, 31)), wearsDown: false, null).To(50, wearsDown: false);

        Assert.Equal(ProjectionStatus.Projected, projection.Status);
        Assert.InRange(projection.Expected!.Km, 75_000, 80_000);
    }

    [Theory]
    [InlineData("one-reading", 8.0)]
    [InlineData("got-better", 8.0, 5.0, 8.0)]
    [InlineData("no-wear", 5.0, 5.1, 5.05, 5.2)]
    public void Of_WhatIsNoWear_IsNamed(string because, params double[] values)
    {
        var projection = WearTrend.Of(Readings([.. values.Select((value, i) => (i * 10_000.0, i * 100, value))]), wearsDown: true, 0.3).To(1.6, wearsDown: true);

        Assert.Equal(ProjectionStatus.Refused, projection.Status);
        Assert.Equal(because, projection.Because?.Sentence.Id);
    }

    [Fact]
    public void Of_OlderReadingFurtherOn_IsNamed() => Assert.Equal(["30000 km", "0 km"], Trend(0.2, (0, 100, 8), (30_000, 0, 5)).Refusal!.Slots);

    [Fact]
    public void Of_TwoWithoutGauge_IsNamed() => Assert.Equal("no-gauge", Trend(null, (0, 0, 8), (30_000, 365, 5)).Refusal?.Sentence.Id);

    [Fact]
    public void To_Noise_IsNotDetermined() =>
        Assert.Equal(ProjectionStatus.NotDetermined, Trend(null, (0, 0, 8), (10_000, 100, 7.7), (20_000, 200, 7.95)).To(1.6, wearsDown: true).Status);

    [Fact]
    public void To_BeyondTheLimit_IsReached() => Assert.Equal(ProjectionStatus.Reached, Trend(0.2, (0, 0, 8), (30_000, 365, 1.5)).To(1.6, wearsDown: true).Status);

    private static WearTrend Trend(double? gaugeError, params (double Km, int Day, double Value)[] readings) => WearTrend.Of(Readings(readings), wearsDown: true, gaugeError);

    private static IEnumerable<Reading> Readings(params (double Km, int Day, double Value)[] readings) =>
        readings.Select(reading => new Reading(reading.Km, Start.AddDays(reading.Day), reading.Value));
}
