namespace Advice.Arithmetic.Oils;

/// <summary>A row of SAE J300, Table 1, for the hot engine.</summary>
/// <param name="Number">Its number.</param>
/// <param name="LeastAt100">Smallest kinematic viscosity at 100 °C, mm²/s.</param>
/// <param name="BelowAt100">It must be below this.</param>
/// <param name="LeastSheared">Smallest viscosity at 150 °C and high shear, mPa·s.</param>
/// <param name="LeastShearedHeavy">The same beside 15W, 20W, 25W or without a W part; differs for SAE 40 only.</param>
public sealed record HotClass(int Number, double LeastAt100, double BelowAt100, double LeastSheared, double LeastShearedHeavy)
{
    /// <summary>The editions that differ.</summary>
    public static IReadOnlyList<string> Editions { get; } = ["1999", "2007", "2013"];

    /// <summary>The rows of an edition, from the thinnest.</summary>
    public static IReadOnlyList<HotClass> Of(string edition)
    {
        HotClass[] thin = [new(8, 4.0, 6.1, 1.7, 1.7), new(12, 5.0, 7.1, 2.0, 2.0), new(16, 6.1, 8.2, 2.3, 2.3), new(20, 6.9, 9.3, 2.6, 2.6)];
        var light = edition == "1999" ? 2.9 : 3.5;
        return
        [
            .. edition == "2013" ? thin : [new(20, 5.6, 9.3, 2.6, 2.6)],
            new(30, 9.3, 12.5, 2.9, 2.9),
            new(40, 12.5, 16.3, light, 3.7),
            new(50, 16.3, 21.9, 3.7, 3.7),
            new(60, 21.9, 26.1, 3.7, 3.7),
        ];
    }
}
