using Advice.Knowledge.Limits;
using Advice.Knowledge.Words;

namespace Advice.Evidence;

/// <summary>A fault that a sign of the case speaks for, or against where the sign is denied.</summary>
/// <param name="Seen">The sign of the case.</param>
/// <param name="Fault">Id of the fault.</param>
/// <param name="Strength">Probability of the sign given the fault, with the share of vehicles that the link applies to.</param>
/// <param name="Rule">Id of the rule, or of the check for outcomes.</param>
/// <param name="Because">The mechanism.</param>
/// <param name="Source">Its source.</param>
public sealed record Link(SeenSign Seen, string Fault, double Strength, string Rule, Text Because, Source? Source);
