namespace Advice.Knowledge.Signs;

/// <summary>A position on the vehicle.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Parts">The wheel positions that it covers; a single wheel covers itself.</param>
/// <param name="Phrases">How people say it.</param>
public sealed record Position(string Id, IReadOnlyList<string> Parts, IReadOnlyList<string> Phrases);
