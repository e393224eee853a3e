using System.Globalization;
using Advice.Knowledge;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Words;

namespace Advice.Counterfactuals;

/// <summary>Facts of a vehicle in words.</summary>
internal sealed class FactWords(Catalogue catalogue)
{
    /// <summary>Each test of a condition, and what is known of the fact.</summary>
    public IEnumerable<ConditionPart> Parts(VehicleCondition when, Case @case) => when.Tests.Select(test => new ConditionPart(
        ConditionKind.Fact, test.Fact.Id, Status(test.Test(@case.Vehicle)),
        $"{test.Fact.Name}: {Asked(test, @case.Workshop.Reader)} ({Stated(test.Fact, @case)})"));

    /// <summary>A value of a fact.</summary>
    public static string Value(VehicleFact fact, string word) =>
        fact.Values.TryGetValue(word, out var name) ? name : word switch { "true" => "yes", "false" => "no", _ => word };

    /// <summary>How an answer stands as a condition.</summary>
    public static ConditionStatus Status(Truth truth) => truth switch
    {
        Truth.Yes => ConditionStatus.Held,
        Truth.No => ConditionStatus.Failed,
        _ => ConditionStatus.Unknown,
    };

    private string Asked(FactTest test, Audience audience) => test.Fact.Kind != FactKind.Number
        ? string.Join(" or ", test.Words.Select(word => Value(test.Fact, word)))
        : string.Join(", ", new[] { Bound(Sentences.AtLeast, test.AtLeast), Bound(Sentences.Below, test.Below) }.OfType<Saying>().Select(bound => catalogue.Say(audience, bound)));

    private static Saying? Bound(Sentence sentence, double? number) => number is { } bound ? new(sentence, bound) : null;

    private string Stated(VehicleFact fact, Case @case)
    {
        var value = fact.Kind == FactKind.Number
            ? @case.Vehicle.Number(fact.Id) is { } number ? Math.Round(number, 1).ToString(CultureInfo.InvariantCulture) : null
            : @case.Vehicle.Word(fact.Id) is { } word ? Value(fact, word) : null;
        return catalogue.Say(@case.Workshop.Reader, value is null ? new Saying(Sentences.NotStated) : new Saying(Sentences.Stated, value));
    }
}
