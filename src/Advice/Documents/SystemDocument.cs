namespace Advice.Documents;

/// <summary>A system that may have the fault.</summary>
/// <param name="System">Id of the system.</param>
/// <param name="Name">Its name.</param>
/// <param name="Probability">Probability that any of its suspected faults is there, to 4 decimals; 0 = no sign points to it.</param>
/// <param name="Named">How much the complaint speaks of it: 1 for each time that it is named, less for words that need not mean it.</param>
public sealed record SystemDocument(string System, string Name, double Probability, double Named);
