using Advice.Knowledge.Words;

namespace Advice.Arithmetic;

/// <summary>What came of a computation: values, or why there are none.</summary>
public sealed record Outcome
{
    /// <summary>The values.</summary>
    public IReadOnlyList<Result> Results { get; init; } = [];

    /// <summary>The class that they fall in, one of the computation's verdicts; null where there is none.</summary>
    public string? Verdict { get; init; }

    /// <summary>What to bear in mind.</summary>
    public IReadOnlyList<Sentence> Notes { get; init; } = [];

    /// <summary>The input that does not go with the others; null where all is well.</summary>
    public Input? Refused { get; init; }

    /// <summary>What would be right of it.</summary>
    public string? Why { get; init; }

    /// <summary>Whether the inputs cannot both be true of one thing, rather than lie beyond what the computation holds for.</summary>
    public bool IsImpossible { get; init; }

    /// <summary>Values.</summary>
    public static Outcome Of(params IReadOnlyList<Result> results) => new() { Results = results };

    /// <summary>No values, for inputs that are possible each by itself but not together.</summary>
    public static Outcome Refuse(Input input, string why) => new() { Refused = input, Why = why };

    /// <summary>The same with a verdict.</summary>
    public Outcome As(string verdict) => this with { Verdict = verdict };

    /// <summary>The same with a note, where it applies.</summary>
    public Outcome Note(bool applies, Sentence note) => applies ? this with { Notes = [.. Notes, note] } : this;
}
