using System.Globalization;
using Advice.Knowledge;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Words;
using Advice.Vehicles;

namespace Advice.Counterfactuals;

/// <summary>Facts that nobody stated and that tests on the vehicle ask for, each with values that pass or fail the test.</summary>
internal sealed class FactChanges(Catalogue catalogue)
{
    /// <summary>What fewer vehicles have is not worth asking for only because it rules others out.</summary>
    private const double Common = 0.1;

    /// <summary>The values with which open tests pass.</summary>
    public IEnumerable<Change> Passing(IEnumerable<VehicleCondition> conditions, Case @case) => Open(conditions, @case)
        .SelectMany(test => test.Fact.Kind == FactKind.Number ? [Number(test, @case)] : test.Words.Select(word => Word(test.Fact, word))).OfType<Change>();

    /// <summary>The common words with which open tests fail.</summary>
    public static IEnumerable<Change> Failing(IEnumerable<VehicleCondition> conditions, Case @case) => Open(conditions, @case)
        .SelectMany(test => test.Fact.Shares.Where(share => share.Value >= Common).Select(share => share.Key).Except(test.Words).Select(word => Word(test.Fact, word))).OfType<Change>();

    private static IEnumerable<FactTest> Open(IEnumerable<VehicleCondition> conditions, Case @case) =>
        conditions.SelectMany(condition => condition.Tests).Where(test => test.Test(@case.Vehicle) == Truth.Unknown);

    private static Change? Word(VehicleFact fact, string word) => FactMember.Of(fact.Id, word) is { } member
        ? Of(fact.Id, $"{fact.Name}: {FactWords.Value(fact, word)}", member) with { Share = fact.Shares.GetValueOrDefault(word) }
        : null;

    private Change? Number(FactTest test, Case @case)
    {
        if (test.Fact.Id == Vehicle.AgeYears)
        {
            var year = test.AtLeast is { } least ? @case.AsOf.Year - (int)Math.Ceiling(least) : @case.AsOf.Year - (int)Math.Ceiling(test.Below!.Value) + 1;
            return FactMember.Of("modelYear", year) is { } ofYear ? Of(test.Fact.Id, catalogue.Say(@case.Workshop.Reader, Sentences.ModelYearOf, year), ofYear) : null;
        }

        // The nearest round number within: of what only has to be low, half.
        var number = test.AtLeast ?? Math.Floor(test.Below!.Value / 2);
        return FactMember.Of(test.Fact.Id, number) is { } member ? Of(test.Fact.Id, string.Create(CultureInfo.InvariantCulture, $"{test.Fact.Name}: {number}"), member) : null;
    }

    private static Change Of(string fact, string text, FactMember member) =>
        new(ChangeKind.Fact, fact, text, member.At, member.Json, request => request with { Vehicle = member.Set(request.Vehicle) });
}
