namespace Advice.Symptoms.Phrases;

/// <summary>A phrase in an index.</summary>
/// <param name="Number">Its place among all phrases.</param>
/// <param name="Phrase">The phrase.</param>
/// <param name="Terms">Its terms.</param>
/// <param name="Needs">Terms that a sentence must have for it to be found.</param>
/// <param name="PatientNeeds">The same where it is looked for with patience.</param>
internal sealed record IndexedPhrase(int Number, Phrase Phrase, TermBits Terms, TermBits Needs, TermBits PatientNeeds);
