namespace Advice.Arithmetic.OxygenSensors;

/// <summary>
/// The voltage of a switching (zirconia) oxygen sensor over seconds, engine warm and in closed loop. Bounds of the trade: lean below 0.3 V, rich above
/// 0.6 V, the switch point at 0.45 V; a sound sensor crosses between the bounds in about 0.1 s and switches at least once in two seconds at a raised idle.
/// </summary>
public sealed record SensorTrace
{
    /// <summary>Below this the mixture is lean, V.</summary>
    public const double LeanVolts = 0.3;

    /// <summary>Above this it is rich, V.</summary>
    public const double RichVolts = 0.6;

    // A cold cell or an open circuit stays at the voltage that the control unit feeds in.
    private const double BiasSwing = 0.15;
    private const double LongestCrossing = 0.2;
    private const double LeastSwitchesPerSecond = 0.5;
    private const double WarmWithin = 60;

    /// <summary>Length of the trace, s.</summary>
    public required double Seconds { get; init; }

    /// <summary>Mean voltage over time.</summary>
    public required double Mean { get; init; }

    /// <summary>Lowest voltage.</summary>
    public required double Lowest { get; init; }

    /// <summary>Highest voltage.</summary>
    public required double Highest { get; init; }

    /// <summary>Changes between lean and rich.</summary>
    public required int Switches { get; init; }

    /// <summary>Median time from one bound to the other, s; null where it never switched.</summary>
    public required double? Crossing { get; init; }

    /// <summary>Seconds until the voltage first left the range of a cold cell; null where it never did.</summary>
    public required double? FirstActive { get; init; }

    /// <summary>Highest minus lowest.</summary>
    public double Swing => Highest - Lowest;

    /// <summary>Changes for each second.</summary>
    public double SwitchesPerSecond => Switches / Seconds;

    /// <summary>switching, lazy, late, inactive, stuck-lean, stuck-rich or narrow.</summary>
    public string Verdict => this switch
    {
        { FirstActive: null } => "inactive",
        { Highest: < 0.45 } => "stuck-lean",
        { Lowest: > 0.45 } => "stuck-rich",
        { FirstActive: > WarmWithin } => "late",
        { Switches: 0 } => "narrow",
        _ => Crossing > LongestCrossing || SwitchesPerSecond < LeastSwitchesPerSecond ? "lazy" : "switching",
    };

    /// <summary>Reads a trace; seconds ascend.</summary>
    public static SensorTrace Of(IReadOnlyList<(double Seconds, double Volts)> trace)
    {
        var (first, seconds) = (trace[0].Seconds, trace[^1].Seconds - trace[0].Seconds);
        var crossings = Crossings(trace);
        return new SensorTrace
        {
            Seconds = seconds,
            Mean = trace.Zip(trace.Skip(1), (a, b) => (b.Seconds - a.Seconds) * (a.Volts + b.Volts) / 2).Sum() / seconds,
            Lowest = trace.Min(point => point.Volts),
            Highest = trace.Max(point => point.Volts),
            Switches = crossings.Count,
            Crossing = crossings.Count == 0 ? null : crossings.Order().ElementAt(crossings.Count / 2),
            FirstActive = trace.Where(point => Math.Abs(point.Volts - 0.45) > BiasSwing).Select(point => (double?)(point.Seconds - first)).FirstOrDefault(),
        };
    }

    /// <summary>Seconds of each way from one bound to the other.</summary>
    private static List<double> Crossings(IReadOnlyList<(double Seconds, double Volts)> trace)
    {
        var (found, side, left) = (new List<double>(), 0, 0.0);
        for (var i = 0; i < trace.Count; i++)
        {
            var now = trace[i].Volts < LeanVolts ? -1 : trace[i].Volts > RichVolts ? 1 : 0;
            if (now == 0)
                continue;
            if (side == -now)
                found.Add(When(trace, i, now < 0 ? LeanVolts : RichVolts) - left);
            side = now;
            left = i + 1 < trace.Count ? When(trace, i + 1, now < 0 ? LeanVolts : RichVolts) : trace[i].Seconds;
        }

        return found;
    }

    /// <summary>When the way to point i passes that voltage; the time of point i where it does not.</summary>
    private static double When(IReadOnlyList<(double Seconds, double Volts)> trace, int i, double volts)
    {
        var (a, b) = (trace[Math.Max(i - 1, 0)], trace[i]);
        return (a.Volts - volts) * (b.Volts - volts) < 0 ? a.Seconds + ((b.Seconds - a.Seconds) * (volts - a.Volts) / (b.Volts - a.Volts)) : b.Seconds;
    }
}
