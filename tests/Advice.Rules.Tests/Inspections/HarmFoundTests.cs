using Advice.Documents.Requests;
using Advice.Inspections;
using Advice.Rules.Bench;
using Advice.Rules.Tests.Laws;
using Advice.Steps;
using CsCheck;

namespace Advice.Rules.Tests.Inspections;

/// <summary>The share of expected harm that the chosen steps find; 'rules inspection-share' prints it.</summary>
public class HarmFoundTests
{
    private static readonly DateOnly Today = new(2026, 3, 1);
    private static readonly InspectionAssessment Inspection = new(RepositoryRules.Book);
    private static readonly InspectionShares Shares = new(RepositoryRules.Book);

    public static TheoryData<string> Names => [.. SampleVehicles.All.Select(sample => sample.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void ChosenSteps_AtEveryBudget_FindNoLessThanASheetStoppedAtThatTime(string name)
    {
        var @case = SampleVehicles.Case(SampleVehicles.All.Single(sample => sample.Name == name).Vehicle, Today);

        Assert.All(Shares.Of(@case, Enumerable.Range(1, 12).Select(i => i * 15)), share => Assert.True(share.Chosen >= share.Sheet, share.ToString()));
    }

    [Fact]
    public void ChosenSteps_AnyVehicleAndTime_FindNoLessThanASheetStoppedAtThatTime() =>
        Gen.Select(RandomRequests.Vehicle, Gen.Int[5, 200]).Sample(
            (vehicle, minutes) => Shares.Of(SampleVehicles.Case(vehicle, Today), [minutes])[0] is { } share && share.Chosen >= share.Sheet,
            iter: 40);

    /// <summary>Here three middling checks find more than any one or two of the largest and what still fits behind them.</summary>
    [Fact]
    public void ChosenSteps_NineMinutes_FindNoLessThanTheWalk()
    {
        var vehicle = new VehicleDescription { ModelYear = 2020, Driveline = "allWheelDrive", Transmission = "automatic" };

        var share = Assert.Single(Shares.Of(SampleVehicles.Case(vehicle, Today), [9]));

        Assert.True(share.Chosen >= share.Sheet, share.ToString());
    }

    /// <summary>Reckoned a second time, by the detections of the rules and nothing of the ranking.</summary>
    [Fact]
    public void Shares_ReckonedByHand_AreTheSame()
    {
        var @case = SampleVehicles.Case(SampleVehicles.All[1].Vehicle, Today);
        var chosen = Inspection.Of(@case with { Workshop = @case.Workshop with { Minutes = 60 } }).Steps;

        Assert.Equal(ByHand(chosen, @case) / ByHand(Inspection.Of(@case).Steps, @case), Shares.Of(@case, [60])[0].Chosen, 9);
    }

    private static double ByHand(IReadOnlyList<Step> steps, Case @case) => steps
        .SelectMany(step => step.Suspects.Select(suspect => (suspect, step.Check))).GroupBy(one => one.suspect.Instance.Fault.Id)
        .Sum(fault => fault.First().suspect.Probability * fault.First().suspect.Instance.Fault.Consequence.Harm
            * (1 - fault.Aggregate(1.0, (missed, one) => missed * (1 - RepositoryRules.Book.Catalogue.Surely(one.Check, fault.Key, @case.Vehicle)))));
}
