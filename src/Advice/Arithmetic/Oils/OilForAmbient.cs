namespace Advice.Arithmetic.Oils;

/// <summary>
/// Which grades suit the weather. Cold side: the engine still turns at the temperature of the row's cranking test in SAE J300, and the oil still flows
/// to the pump 5 °C below it. Hot side: J300 sets none; charts of the trade end a 30 at about 40 °C, and leave 20 and thinner to the maker.
/// </summary>
public static class OilForAmbient
{
    private const double MostDegCOf30 = 40;

    /// <summary>Whether the grade suits weather between these temperatures, °C.</summary>
    public static bool Suits(OilGrade grade, double lowest, double highest) => Suits(grade.Cold, lowest) && IsThickEnough(grade.Hot, highest);

    /// <summary>The lowest temperature at which the engine turns with that W number, °C; null = J300 tests none.</summary>
    public static double? LowestStartDegC(int? cold) => ColdClass.All.FirstOrDefault(row => row.Number == cold)?.CrankingDegC;

    /// <summary>The W numbers that suit, from the coldest.</summary>
    public static IReadOnlyList<int> ColdNumbers(double lowest) => [.. ColdClass.All.Where(row => row.CrankingDegC <= lowest).Select(row => row.Number)];

    // Without a W part nothing is known about the cold; 0 °C is where charts of the trade begin single grades.
    private static bool Suits(int? cold, double lowest) => lowest >= (LowestStartDegC(cold) ?? 0);

    private static bool IsThickEnough(int? hot, double highest) => hot is not { } number || number > 30 || highest <= MostDegCOf30;
}
