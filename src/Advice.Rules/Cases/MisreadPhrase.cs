namespace Advice.Rules.Cases;

/// <summary>A phrase that, written by a driver, is not read as its own symptom.</summary>
/// <param name="Symptom">Id of the symptom that lists it.</param>
/// <param name="Said">The phrase, a class replaced by one of its words.</param>
/// <param name="ReadAs">Ids of the symptoms that are read in it as present; empty = none.</param>
public sealed record MisreadPhrase(string Symptom, string Said, IReadOnlyList<string> ReadAs)
{
    /// <inheritdoc/>
    public override string ToString() =>
        $"the phrase '{Said}' of '{Symptom}' is read as {(ReadAs.Count == 0 ? "nothing" : string.Join(", ", ReadAs))}; change it or the phrase that takes its words";
}
