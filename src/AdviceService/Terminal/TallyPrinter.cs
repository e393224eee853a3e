using Advice.Knowledge;
using AdviceService.Fleet.Scoring;

namespace AdviceService.Terminal;

/// <summary>Prints what a fleet adds up to on standard error, so that replies in a pipe stay alone.</summary>
internal static class TallyPrinter
{
    private const int Most = 5;

    public static void Print(Tally tally, Catalogue catalogue)
    {
        Console.Error.WriteLine($"{tally.Answers} vehicles answered, {tally.Problems} problems, {tally.Minutes} minutes in the workshop.");
        Line("Driving", tally.Driving.Select(one => $"{one.Key} {one.Value}"));
        Line("To be seen", tally.WithinDays.Select(one => $"{TallyPage.Within(one.Key)} {one.Value}"));
        Line("Checks needed most", Tally.Top(tally.Checks, Most).Select(one => $"{TallyNames.OfCheck(one.Key, catalogue)} ({one.Value})"));
        Line("Parts needed most, if the likeliest faults are found", Tally.Top(tally.Parts, Most).Select(one => $"{TallyNames.OfPart(one.Key, catalogue)} ({one.Value})"));
        Line("Faults suspected most", Tally.Top(tally.Faults, Most).Select(one => $"{TallyNames.OfFault(one.Key, catalogue)} ({one.Value})"));
    }

    private static void Line(string title, IEnumerable<string> items)
    {
        if (string.Join(", ", items) is { Length: > 0 } text)
            Console.Error.WriteLine($"{title}: {text}");
    }
}
