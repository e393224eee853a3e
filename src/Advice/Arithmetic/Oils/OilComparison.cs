namespace Advice.Arithmetic.Oils;

/// <summary>The grade in the sump held against the one that the maker names.</summary>
public static class OilComparison
{
    /// <summary>named, thinner-when-hot, thicker-when-hot, stiffer-in-cold or easier-in-cold; what matters most first: the hot film, then the start.</summary>
    public static string Of(OilGrade inSump, OilGrade named)
    {
        if (inSump == named)
            return "named";
        if (inSump.Hot != named.Hot)
            return (inSump.Hot ?? 0) < (named.Hot ?? 0) ? "thinner-when-hot" : "thicker-when-hot";
        return (inSump.Cold ?? int.MaxValue) > (named.Cold ?? int.MaxValue) ? "stiffer-in-cold" : "easier-in-cold";
    }
}
