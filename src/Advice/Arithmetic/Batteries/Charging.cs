namespace Advice.Arithmetic.Batteries;

/// <summary>Charging voltage of a 12 V system at about 2000 rpm: 13.8 … 14.8 V is usual, below 13.2 V is too low (training sheet).</summary>
public static class Charging
{
    /// <summary>The class of a voltage: none (below a charged battery at rest, 12.7 V), too-low, low, usual or high.</summary>
    public static string Of(double volts) => volts switch
    {
        < 12.7 => "none",
        < 13.2 => "too-low",
        < 13.8 => "low",
        <= 14.8 => "usual",
        _ => "high",
    };
}
