using Advice.Documents;
using Advice.Inspections;
using Advice.Intake;
using Advice.Knowledge;
using Advice.Steps;
using Xunit.Abstractions;

namespace Advice.Rules.Tests.Inspections;

/// <summary>
/// The share of expected harm that the chosen steps find, against a sheet of all checks in a fixed order that is stopped when its time
/// is up. Prints both: dotnet test tests/Advice.Rules.Tests --filter HarmFound --logger "console;verbosity=detailed".
/// </summary>
public class HarmFoundTests(ITestOutputHelper output)
{
    private static readonly int[] Budgets = [15, 30, 60, 90, 120, 180];
    private static readonly DateOnly Today = new(2026, 3, 1);
    private static readonly InspectionAssessment Inspection = new(RepositoryRules.Book);

    private static readonly VehicleDescription[] Described =
    [
        new(),
        new() { ModelYear = 2011, Body = "pickup", Driveline = "fourWheelDrive", Fuel = "gasoline", Transmission = "automatic", Odometer = Km(210_000) },
        new() { ModelYear = 2022, Driveline = "frontWheelDrive", Fuel = "electric", Odometer = Km(40_000) },
        new() { ModelYear = 2016, Driveline = "frontWheelDrive", Fuel = "diesel", Transmission = "manual", Odometer = Km(160_000) },
        new() { ModelYear = 2024, Driveline = "allWheelDrive", Fuel = "hybrid", Odometer = Km(15_000) },
        new() { ModelYear = 2003, Driveline = "rearWheelDrive", Fuel = "gasoline", Transmission = "manual", Odometer = Km(250_000), Duty = "severe" },
    ];

    public static TheoryData<int> Vehicles => [.. Enumerable.Range(0, Described.Length)];

    [Theory]
    [MemberData(nameof(Vehicles))]
    public void ChosenSteps_FindNoLessHarmThanASheetStoppedAtThatTime(int vehicle)
    {
        var whole = Case(Described[vehicle], null);
        var all = Inspection.Of(whole).Steps;
        var total = Found(all, whole);
        foreach (var minutes in Budgets)
        {
            var ours = Found(Inspection.Of(Case(Described[vehicle], minutes)).Steps, whole) / total;
            var inOrderOfWork = Found(Stopped(all, minutes), whole) / total;
            var byArea = Found(Stopped([.. all.OrderBy(step => step.Check.Area.Order).ThenBy(step => step.Check.Id, StringComparer.Ordinal)], minutes), whole) / total;
            output.WriteLine(FormattableString.Invariant(
                $"vehicle {vehicle}, {minutes,3} min: chosen {ours:P1}, sheet in order of work {inOrderOfWork:P1}, sheet by area {byArea:P1}"));
            Assert.True(ours >= inOrderOfWork && ours >= byArea);
        }
    }

    /// <summary>The checks of a sheet that are done when the time is up, each set-up arranged once.</summary>
    private static List<Step> Stopped(IReadOnlyList<Step> sheet, int minutes)
    {
        var (done, arranged, left) = (new List<Step>(), new HashSet<string>(), minutes);
        foreach (var step in sheet)
        {
            left -= step.Check.Minutes + step.Check.Needs.Where(need => arranged.Add(need.Id)).Sum(need => need.Minutes);
            if (left < 0)
                break;
            done.Add(step);
        }

        return done;
    }

    /// <summary>Σ over faults probability · harm · (1 − Π (1 − surely)), reckoned apart from the ranking.</summary>
    private static double Found(IEnumerable<Step> steps, Case @case)
    {
        var (missed, weights) = (new Dictionary<string, double>(), new Dictionary<string, double>());
        foreach (var step in steps)
        {
            foreach (var suspect in step.Suspects)
            {
                var fault = suspect.Instance.Fault;
                var share = VehicleFit.Share(RepositoryRules.Book.Catalogue.FitsByCheck[step.Check.Id], RepositoryRules.Book.Catalogue.FitsByFault[fault.Id], @case.Vehicle);
                weights[fault.Id] = suspect.Probability * fault.Consequence.Harm;
                missed[fault.Id] = missed.GetValueOrDefault(fault.Id, 1) * (1 - (step.Check.Surely(fault.Id) * share));
            }
        }

        return weights.Sum(one => one.Value * (1 - missed[one.Key]));
    }

    private static Case Case(VehicleDescription vehicle, int? minutes) => new()
    {
        AsOf = Today,
        Vehicle = VehicleReader.Read(vehicle, Today),
        Workshop = new Workshop(true, minutes, Audience.Technician),
    };

    private static Quantity Km(double km) => new() { Value = km, Unit = "km" };
}
