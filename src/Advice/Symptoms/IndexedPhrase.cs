namespace Advice.Symptoms;

/// <summary>A phrase in an index.</summary>
/// <param name="Phrase">The phrase.</param>
/// <param name="Needs">Terms that a sentence must have for it to be found; none where it may be found in part.</param>
/// <param name="PatientNeeds">The same where it is looked for with patience.</param>
internal readonly record struct IndexedPhrase(Phrase Phrase, TermBits Needs, TermBits PatientNeeds);
