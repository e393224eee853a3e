using Advice.Arithmetic.Operators;

namespace Advice.Arithmetic.Catalogue;

/// <summary>Fleets.</summary>
internal static class OperatorComputations
{
    private const int Years = 3;
    private static readonly SeriesInput Dangerous = Counted("dangerous", "dangerous deficiencies");
    private static readonly SeriesInput Major = Counted("major", "major deficiencies");
    private static readonly SeriesInput Minor = Counted("minor", "minor deficiencies");
    private static readonly SeriesInput Checks = Counted("checks", "inspections");

    public static IReadOnlyList<Computation> All { get; } =
    [
        new("operator-risk-rating", "Risk rating of an operator from the deficiencies found in three years", "(3 D₁ + 2 D₂ + D₃) / checks, D = 40 dangerous + 10 major + minor",
            [From.Primary("Directive 2014/47/EU, proposal", "Annex I", "weights"), From.Memory("Directive 2014/47/EU", "Annex I, 3", "formula")],
            [Dangerous, Major, Minor, Checks], Rate),
    ];

    private static SeriesInput Counted(string name, string what) =>
        new(name, $"{what} in the last twelve months, in the year before and in the one before that", null, 0, 100_000, Years, Years);

    private static Outcome Rate(Given given)
    {
        var points = Enumerable.Range(0, Years).Select(year => RiskRating.Points(given[Dangerous][year], given[Major][year], given[Minor][year])).ToList();
        return given[Checks].Sum() > 0
            ? Outcome.Of(Result.Of("rating", RiskRating.Of(points, given[Checks])))
            : Outcome.Refuse(Checks, "At least one inspection is needed.");
    }
}
