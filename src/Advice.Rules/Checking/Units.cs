namespace Advice.Rules.Checking;

/// <summary>Which units measure the same quantity.</summary>
internal static class Units
{
    private static readonly string[][] Quantities =
    [
        ["mm", "in", "32nds", "cm", "m"], ["V", "mV"], ["A", "mA"], ["kPa", "bar", "psi"], ["degC", "degF"], ["percent", "%"], ["km", "mi"],
    ];

    /// <summary>Whether a value in one unit can be compared with one in the other.</summary>
    public static bool SameQuantity(string a, string b) => a == b || Quantities.Any(units => units.Contains(a) && units.Contains(b));
}
