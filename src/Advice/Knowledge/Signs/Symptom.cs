using Advice.Knowledge.Words;

namespace Advice.Knowledge.Signs;

/// <summary>Something that a driver notices.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="UnexplainedShare">Share of such reports that no listed fault explains, 0 … 1.</param>
/// <param name="Ask">The question that asks for it, answerable with yes or no.</param>
/// <param name="Phrases">How people say it.</param>
public sealed record Symptom(string Id, Text Name, double UnexplainedShare, string Ask, IReadOnlyList<string> Phrases)
{
    /// <summary>Whole sentences by which owners told it. Reading learns from them which words tell of it; they need not be found again word for word.</summary>
    public IReadOnlyList<string> Sentences { get; init; } = [];

    /// <summary>Ids of symptoms whose report answers the question for this one too: finer forms, other words for it, or what tells it apart already.</summary>
    public IReadOnlyList<string> AnsweredBy { get; init; } = [];

    /// <summary>Symptoms that do so on certain occasions.</summary>
    public IReadOnlyList<AnsweredOn> AnsweredOn { get; init; } = [];

    /// <summary>What it costs a driver to tell whether it is there: 1 = known at once; infinite = only others can tell, so that it is not asked for.</summary>
    public double Effort { get; init; } = 1;
}
