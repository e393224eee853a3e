using System.Globalization;
using Advice.Arithmetic.Operators;
using Advice.Knowledge.Words;

namespace Advice.Arithmetic.Catalogue;

/// <summary>Fleets, lives of parts, tests that the law asks for.</summary>
internal static class OperatorComputations
{
    private const int Years = 3;
    private static readonly SeriesInput Dangerous = Counted("dangerous", "dangerous deficiencies");
    private static readonly SeriesInput Major = Counted("major", "major deficiencies");
    private static readonly SeriesInput Minor = Counted("minor", "minor deficiencies");
    private static readonly SeriesInput Checks = Counted("checks", "inspections");

    private static readonly SeriesInput Failed = new("failed", "life of each part that failed, all in one unit of time or distance", null, 0.001, 10_000_000, 1, 500);
    private static readonly SeriesInput Running = new("running", "life so far of each part that still runs", null, 0.001, 10_000_000, 1, 500) { Optional = true };
    private static readonly NumberInput Age = new("age", "life so far of the part asked about", null, 0, 10_000_000) { Optional = true };
    private static readonly NumberInput Further = new("further", "how much further it is to run", null, 0, 10_000_000) { Optional = true };
    private static readonly WordInput Law = new("law", "the law; EU = the least that the Directive asks for, states may ask for more", "DE", "EU");
    private static readonly WordInput Use = new("use", "private car, or taxi and hire car; left out = private", "private", "hire") { Optional = true };
    private static readonly DayInput Registered = new("registered", "day of the first registration") { Past = true };
    private static readonly DayInput LastTest = new("lastTest", "day of the last test; left out = none yet") { Past = true, Optional = true };
    private static readonly DayInput On = new("asOf", "the day that counts");
    private static readonly NumberInput Odometer = new("odometer", "distance driven", "km", 0, 3_000_000) { Optional = true };
    private static readonly NumberInput OdometerThen = new("odometerAtLastTest", "distance driven at the last test; left out = unknown", "km", 0, 3_000_000) { Optional = true };

    public static IReadOnlyList<Computation> All { get; } =
    [
        new("operator-risk-rating", "Risk rating of an operator from the deficiencies found in three years", "(3 D₁ + 2 D₂ + D₃) / checks, D = 40 dangerous + 10 major + minor",
            [From.Primary("Directive 2014/47/EU, proposal", "Annex I", "weights"), From.Memory("Directive 2014/47/EU", "Annex I, 3", "formula")],
            [Dangerous, Major, Minor, Checks], Rate),
        new("part-life", "Life of a part from failures and from parts that still run", "Weibull: Σ tᵝ ln t / Σ tᵝ − 1/β = mean of ln t at failure, η = (Σ tᵝ / failures)^(1/β)",
            [From.Primary("NIST/SEMATECH e-Handbook", "8.4.1.3")], [Failed, Running, Age, Further], Life),
        new("roadworthiness-test", "When the next periodic roadworthiness test is due", "months from first registration, then from test to test; early from 160,000 km",
            [From.Primary("StVZO Anlage VIII", "2.1"), From.Restated("Directive 2014/45/EU", "article 5", "states may ask for more")],
            [Law, Use, Registered, LastTest, On, Odometer, OdometerThen], Test)
        { Verdicts = ["later", "early", "due"] },
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

    private static Outcome Life(Given given)
    {
        if (given.Has(Age) != given.Has(Further))
            return Outcome.Refuse(given.Has(Age) ? Age : Further, "The age and how much further go together.");
        if (WeibullLife.Of(given[Failed], given.Maybe(Running)) is not { } life)
            return Outcome.Refuse(Failed, "The lives must differ, and not by powers of ten: no distribution of this kind fits them.");
        List<Result> results =
        [
            Result.Of("shape", life.Shape), Result.Of("scale", life.Scale), Result.Of("mean", life.Mean), Result.Of("deviation", life.Deviation),
            Result.Of("tenthFailsBy", life.FailedBy(0.1)), Result.Of("halfFailsBy", life.FailedBy(0.5)),
        ];
        if (given.Maybe(Age) is { } age && given.Maybe(Further) is { } further)
            results.Add(Result.Of("survivesFurther", life.SurvivingFurther(age, further)));
        return Outcome.Of(results)
            .Note(life.Shape <= 1, Sentences.DoesNotWearOut)
            .Note(given[Failed].Count < 5, Sentences.FewFailures);
    }

    private static Outcome Test(Given given)
    {
        var (registered, last) = (given[Registered], given.Maybe(LastTest));
        if (last < registered)
            return Outcome.Refuse(LastTest, "Must not be before the first registration.");
        var test = RoadworthinessTest.All.First(one => one.Law == given[Law] && one.Use == (given.Maybe(Use) ?? "private"));
        var next = test.Next(registered, last);
        var daysLeft = next.DayNumber - given[On].DayNumber;
        var isFar = given.Maybe(Odometer) >= RoadworthinessTest.EarlyTestKm && !(given.Maybe(OdometerThen) >= RoadworthinessTest.EarlyTestKm);
        return Outcome.Of(Result.Of("due", next.ToString("O", CultureInfo.InvariantCulture)), Result.Of("daysLeft", daysLeft))
            .As(daysLeft <= 0 ? "due" : isFar ? "early" : "later")
            .Note(isFar, Sentences.TestBeforeTime);
    }
}
