using Advice.Knowledge.Words;

namespace Advice.Knowledge;

/// <summary>A part, set or fluid that is ordered when one of its faults is found.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="Faults">Ids of the faults.</param>
public sealed record Part(string Id, Text Name, IReadOnlyList<string> Faults);
