using System.Text.Json;
using AdviceService.Http.Problems;

namespace AdviceService.Fleet;

/// <summary>What is wrong with one line of a batch.</summary>
/// <param name="Id">The id of the line as it was given; null where it could not be read.</param>
/// <param name="Line">Its number, from 1.</param>
/// <param name="Problem">The problem.</param>
public sealed record ProblemLine(JsonElement? Id, int Line, ProblemDocument Problem);
