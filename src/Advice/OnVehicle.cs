using Advice.Steps;
using Advice.Suspects;

namespace Advice;

/// <summary>What assessing a case found out of its vehicle and of checks; what is foreseen for the case starts from it.</summary>
/// <param name="Faults">Its faults.</param>
/// <param name="Checks">What the case says of checks.</param>
internal sealed record OnVehicle(FaultsOnVehicle Faults, ChecksInCase Checks);
