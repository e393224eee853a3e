using Advice.Symptoms.Phrases;

namespace Advice.Symptoms;

/// <summary>A symptom that a text states or denies, while its circumstances are collected.</summary>
/// <param name="match">The phrase that says so.</param>
/// <param name="present">Whether it is noticed.</param>
internal sealed class Statement(PhraseMatch match, bool present)
{
    private PhraseMatch? position;

    /// <summary>The phrase that says so.</summary>
    public PhraseMatch Match { get; } = match;

    /// <summary>Whether it is noticed.</summary>
    public bool Present { get; } = present;

    /// <summary>Whether it is said to have ceased: on the occasions if there are any, else altogether.</summary>
    public bool Ceases { get; init; }

    /// <summary>Whether it is said to cease each time: "goes away after a minute".</summary>
    public bool ComesBack { get; init; }

    /// <summary>Whether it is said to have ended, for now or for good.</summary>
    public bool HasEnded { get; init; }

    /// <summary>Whether the text only asks whether it is the cause.</summary>
    public bool IsAsked { get; init; }

    /// <summary>Finds what else its words may mean.</summary>
    public Lazy<IReadOnlyList<Guess>>? Rivals { get; init; }

    /// <summary>Whether it only adds an occasion on which another statement does not hold.</summary>
    public bool IsException { get; init; }

    /// <summary>Ids of the occasions.</summary>
    public List<string> Occasions { get; } = [];

    /// <summary>Id of the position.</summary>
    public string? Position => position?.Meaning;

    /// <summary>Whether a clause is its own or one of its own.</summary>
    public bool IsIn(int clause) => Match.First.Clause <= clause && clause <= Match.Last.Clause;

    /// <summary>Gives it the position, unless it has a nearer one.</summary>
    public void Place(PhraseMatch place)
    {
        if (position is null || Distance(place) < Distance(position))
            position = place;
    }

    /// <summary>The statement that it does not hold on that occasion.</summary>
    public Statement Except(PhraseMatch occasion) =>
        new(Match, present: false) { IsException = true, Occasions = { occasion.Meaning } };

    /// <summary>The statement that it is there again.</summary>
    public Statement Back() => new(Match, present: true) { Rivals = Rivals, position = position };

    /// <summary>The statement that it holds on that occasion alone: "not on the motorway, only in traffic".</summary>
    public Statement Only(PhraseMatch occasion) => new(Match, present: true) { IsException = true, Occasions = { occasion.Meaning } };

    private int Distance(PhraseMatch place) =>
        Math.Max(place.First.Index - Match.Last.Index, Match.First.Index - place.Last.Index);
}
