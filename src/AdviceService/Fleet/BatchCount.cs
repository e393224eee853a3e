namespace AdviceService.Fleet;

/// <summary>What was done of a batch.</summary>
/// <param name="Lines">Lines read, blank ones left out.</param>
/// <param name="Answers">Lines answered with advice.</param>
/// <param name="Problems">Lines answered with a problem.</param>
/// <param name="Complete">Whether the input was read to its end.</param>
public sealed record BatchCount(int Lines, int Answers, int Problems, bool Complete);
