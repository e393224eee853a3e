using System.Text.Json;

namespace Advice.Rules.Cases;

/// <summary>Reads the request of a case as the service reads that of a caller.</summary>
/// <param name="given">The request.</param>
/// <param name="today">The day that counts where the request names none.</param>
public delegate GivenRequest ReadGiven(JsonElement given, DateOnly today);
