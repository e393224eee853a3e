using System.CommandLine;
using System.Globalization;
using Advice;
using Advice.Rules.Bench;
using Advice.Rules.Bench.Drivers;

namespace AdviceService.Verbs;

/// <summary>The verb "rules questions": how soon our questions find the fault of simulated drivers, against other orders.</summary>
internal static class QuestionsVerb
{
    private const int Most = 6;

    private static readonly DateOnly AsOf = new(2026, 3, 1);

    public static Command Command(RuleOptions rules)
    {
        var drivers = new Option<int>("--drivers") { Description = "How many drivers to draw", DefaultValueFactory = _ => 1200 };
        var seed = new Option<int>("--seed") { Description = "Where the draw starts", DefaultValueFactory = _ => 1 };
        var questions = new Command("questions", "Show how soon our questions bring the fault of simulated drivers among the first three suspects, against other orders") { drivers, seed };
        questions.SetAction(parsed => Show(rules.ForAuthor(parsed), Math.Max(1, parsed.GetValue(drivers)), parsed.GetValue(seed)));
        return questions;
    }

    private static int Show(RuleFolders folders, int count, int seed)
    {
        if (RuleFolder.Load(folders) is not { } book)
            return 1;
        var (catalogue, assessment) = (book.Catalogue, new Assessment(book));
        var vehicles = SampleVehicles.All.Select(one => SampleVehicles.Case(one.Vehicle, AsOf));
        IReadOnlyList<Driver> drivers = [.. new DriverDraw(book, vehicles).Draw(count, seed)];
        Console.WriteLine($"{count} drivers; their fault is among the first three suspects after … questions:");
        Console.WriteLine($"{"",-16}{string.Concat(Enumerable.Range(0, Most + 1).Select(questions => $"{questions,8}"))}    mean");
        foreach (var order in (IAskingOrder[])[new MostTelling(catalogue, assessment), Listed.CommonestFirst(catalogue), Listed.AtRandom(catalogue, seed)])
        {
            var curve = InterviewCurve.Over(drivers, order, assessment, Most);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{curve.Order,-16}{string.Concat(curve.Shares.Select(share => share.ToString("P1", CultureInfo.InvariantCulture).PadLeft(8)))}{curve.MeanQuestions,8:0.00}"));
        }

        return 0;
    }
}
