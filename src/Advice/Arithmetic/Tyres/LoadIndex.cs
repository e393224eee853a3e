namespace Advice.Arithmetic.Tyres;

/// <summary>Load index 60 … 126: the table of ISO 4000-1 (ETRTO); 15 rows as restated, the others from memory and within 1.8 % of 45 · 10^(index / 80).</summary>
public static class LoadIndex
{
    /// <summary>The smallest index of the table.</summary>
    public const int Least = 60;

    private static readonly int[] Table =
    [
        250, 257, 265, 272, 280, 290, 300, 307, 315, 325, 335, 345, 355, 365, 375, 387, 400, 412, 425, 437, 450, 462, 475, 487, 500, 515, 530, 545,
        560, 580, 600, 615, 630, 650, 670, 690, 710, 730, 750, 775, 800, 825, 850, 875, 900, 925, 950, 975, 1000, 1030, 1060, 1090, 1120, 1150, 1180,
        1215, 1250, 1285, 1320, 1360, 1400, 1450, 1500, 1550, 1600, 1650, 1700,
    ];

    /// <summary>The largest index of the table.</summary>
    public static int Most => Least + Table.Length - 1;

    /// <summary>What one tyre may carry, kg.</summary>
    public static int Kilograms(int index) => Table[index - Least];
}
