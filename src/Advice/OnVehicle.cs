using Advice.Steps;
using Advice.Suspects;

namespace Advice;

/// <summary>What assessing a case found out of its vehicle, good for any case that differs by its reports alone.</summary>
/// <param name="Faults">Its faults.</param>
/// <param name="Needs">What it has of what checks need.</param>
internal sealed record OnVehicle(FaultsOnVehicle Faults, NeedsOnVehicle Needs);
