namespace Advice.Knowledge.Signs;

/// <summary>A symptom that answers the question for another one where it is noticed on certain occasions: who tells of a grinding noise when braking is not asked whether the brakes grind.</summary>
/// <param name="Symptom">Id of the symptom.</param>
/// <param name="Occasions">Ids of the occasions, one of which must be stated.</param>
public sealed record AnsweredOn(string Symptom, IReadOnlyList<string> Occasions);
