namespace Advice.Steps;

/// <summary>That a check finds a fault, as far as no case is needed to know it.</summary>
/// <param name="Check">Place of the check among all checks by id.</param>
/// <param name="Need">Place of what the check needs on a vehicle with that fault.</param>
/// <param name="Surely">How surely it finds the fault where it can be done.</param>
internal readonly record struct Finder(int Check, int Need, double Surely);
