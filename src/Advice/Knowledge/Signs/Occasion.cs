namespace Advice.Knowledge.Signs;

/// <summary>When a symptom is noticed.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Within">The wider occasion that it is part of, if any.</param>
/// <param name="Name">Its name.</param>
/// <param name="Phrases">How people say it.</param>
/// <param name="IsEvent">Whether it happened once before, as a tyre change did, and is no condition that lasts or comes back.</param>
public sealed record Occasion(string Id, string? Within, string Name, IReadOnlyList<string> Phrases, bool IsEvent = false);
