using System.CommandLine;
using System.Globalization;
using Advice.Rules.Bench;

namespace AdviceService.Verbs;

/// <summary>The verb "rules inspection-share": what an inspection within some minutes finds, against a sheet stopped at that time.</summary>
internal static class InspectionShareVerb
{
    private const int Step = 15;
    private const int Longest = 180;

    // The sample vehicles are as old as their names say on this day.
    private static readonly DateOnly AsOf = new(2026, 3, 1);

    public static Command Command(RuleOptions rules)
    {
        var share = new Command("inspection-share", "Show which share of the expected harm an inspection finds within 15 to 180 minutes, and a fixed sheet stopped at that time");
        share.SetAction(parsed => Show(rules.ForAuthor(parsed)));
        return share;
    }

    /// <summary>Fails where a sheet finds more.</summary>
    private static int Show(RuleFolders folders)
    {
        if (RuleFolder.Load(folders) is not { } book)
            return 1;
        var shares = new InspectionShares(book);
        var behind = 0;
        foreach (var (name, vehicle) in SampleVehicles.All)
        {
            Console.WriteLine($"{name}:");
            foreach (var share in shares.Of(SampleVehicles.Case(vehicle, AsOf), Enumerable.Range(1, Longest / Step).Select(i => i * Step)))
            {
                behind += share.Chosen < share.Sheet ? 1 : 0;
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {share.Minutes,3} min: chosen {share.Chosen,6:P1}, sheet {share.Sheet,6:P1}"));
            }
        }

        if (behind > 0)
            Console.Error.WriteLine($"The sheet finds more in {behind} of them.");
        return behind == 0 ? 0 : 1;
    }
}
