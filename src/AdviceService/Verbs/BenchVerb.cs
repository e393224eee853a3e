using System.CommandLine;
using Advice.Rules.Bench;

namespace AdviceService.Verbs;

/// <summary>The verb "rules bench": how long the parts of the work take on this machine.</summary>
internal static class BenchVerb
{
    public static Command Command(RuleOptions rules)
    {
        var rounds = new Option<int>("--rounds") { Description = "How often to go through all cases", DefaultValueFactory = _ => 5 };
        var bench = new Command("bench", "Time load, matching, inference and whole advice over the cases, on this machine") { rounds };
        bench.SetAction(parsed => Bench(rules.ForAuthor(parsed), Math.Max(1, parsed.GetValue(rounds))));
        return bench;
    }

    private static int Bench(RuleFolders folders, int rounds)
    {
        var time = TimeProvider.System;
        var start = time.GetTimestamp();
        if (RuleFolder.Load(folders) is not { } book)
            return 1;
        var first = time.GetElapsedTime(start);
        var cases = CaseFiles.Read(folders, book).Cases;
        if (cases.Count == 0)
        {
            Console.Error.WriteLine("There are no cases to time.");
            return 1;
        }

        var times = new StageClock(book, cases, time).Times(rounds);
        start = time.GetTimestamp();
        RuleFolder.Load(folders);
        var again = time.GetElapsedTime(start);
        Console.WriteLine(Line("load, first", first.TotalMilliseconds, "ms", $""));
        Console.WriteLine(Line("load, again", again.TotalMilliseconds, "ms", $"{again / first:0.00} of the first"));
        foreach (var one in times)
            Console.WriteLine(Line(one.Stage, one.Microseconds, "µs", $"{one.Microseconds / times[^1].Microseconds:0.00} of the whole, {one.Microseconds / Matching(times):0.00} × matching"));
        Console.WriteLine(Line("advice in a second", 1e6 / times[^1].Microseconds, "", $"on one core"));
        Console.WriteLine($"{cases.Count} cases, {rounds} rounds: median of the means over the cases, after {(rounds / 3) + 1} rounds to warm up.");
        return 0;
    }

    private static double Matching(IReadOnlyList<StageTime> times) => times.First(one => one.Stage == "matching").Microseconds;

    private static string Line(string what, double number, string unit, FormattableString beside) =>
        FormattableString.Invariant($"{what,-22} {number,9:0.0} {unit,-2}  {FormattableString.Invariant(beside)}").TrimEnd();
}
