namespace Advice.Knowledge.Conditions;

/// <summary>A fact about vehicles that rules may ask for.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">Its name, as in "we do not know …".</param>
/// <param name="Kind">What kind of value it has.</param>
/// <param name="Values">For words: each value and its name.</param>
/// <param name="Shares">Share of vehicles with each value ("true", "false" for truths); empty for numbers.</param>
public sealed record VehicleFact(
    string Id, string Name, FactKind Kind, IReadOnlyDictionary<string, string> Values, IReadOnlyDictionary<string, double> Shares)
{
    /// <summary>What a value may be made of, such as severe use of towing or dust: each kind and its name, by value.</summary>
    public IReadOnlyDictionary<string, IReadOnlyDictionary<string, string>> Kinds { get; init; } = new Dictionary<string, IReadOnlyDictionary<string, string>>();
}
