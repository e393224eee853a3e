using System.CommandLine;
using System.Globalization;
using AdviceService.Fleet;
using AdviceService.Fleet.Scoring;

namespace AdviceService.Verbs;

/// <summary>What the verbs for fleets share.</summary>
internal static class FleetOptions
{
    /// <summary>How much is answered.</summary>
    public static Option<LineDetail> Detail() => new("--detail") { Description = "How much is answered", DefaultValueFactory = _ => LineDetail.Triage };

    /// <summary>The day.</summary>
    public static Option<DateOnly?> AsOf() => new("--as-of")
    {
        Description = "The day that counts where a line names none, as 2026-03-01; without it today",
        CustomParser = given =>
        {
            if (DateOnly.TryParseExact(given.Tokens.Single().Value, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
                return day;
            given.AddError("--as-of is a day such as 2026-03-01.");
            return null;
        },
    };

    /// <summary>How many lines are worked on at once.</summary>
    public static Option<int> Cores() => Positive(new("--cores") { Description = "How many lines are worked on at once", DefaultValueFactory = _ => Environment.ProcessorCount }, 1024);

    /// <summary>Refuses what is not from 1 to a maximum.</summary>
    public static Option<int> Positive(Option<int> option, int most)
    {
        option.Validators.Add(given =>
        {
            if (given.GetValueOrDefault<int>() < 1 || given.GetValueOrDefault<int>() > most)
                given.AddError(string.Create(CultureInfo.InvariantCulture, $"{option.Name} is 1 to {most}."));
        });
        return option;
    }

    /// <summary>The form of replies that go to such a path.</summary>
    public static ScoreFormat FormatOf(string path) =>
        HasEnding(path, ".csv") ? ScoreFormat.Csv : HasEnding(path, ".parquet") ? ScoreFormat.Parquet : ScoreFormat.Ndjson;

    /// <summary>Whether a fleet of such a path is a table.</summary>
    public static bool IsTable(string path) => HasEnding(path, ".csv");

    private static bool HasEnding(string path, string ending) => path.EndsWith(ending, StringComparison.OrdinalIgnoreCase);
}
