using Advice.Arithmetic;
using Advice.Knowledge;
using Advice.Knowledge.Words;

namespace Advice.Documents.Judgements;

/// <summary>What a piece of workshop arithmetic gave.</summary>
public record ComputationDocument
{
    /// <summary>Name of the computation.</summary>
    public required string Computation { get; init; }

    /// <summary>The values.</summary>
    public required IReadOnlyList<Result> Results { get; init; }

    /// <summary>The class that they fall in, one of the verdicts in the list of computations; null where there is none.</summary>
    public string? Verdict { get; init; }

    /// <summary>What the verdict says of the vehicle.</summary>
    public required IReadOnlyList<MeaningDocument> Meanings { get; init; }

    /// <summary>What to bear in mind.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>The formula or rule.</summary>
    public required string Formula { get; init; }

    /// <summary>Where formula and figures come from.</summary>
    public required IReadOnlyList<string> Sources { get; init; }

    /// <summary>The answer of a computation.</summary>
    /// <param name="computation">The computation.</param>
    /// <param name="outcome">What came of it.</param>
    /// <param name="catalogue">What its verdicts mean, and the words of its notes.</param>
    /// <param name="reader">For whom to write.</param>
    public static ComputationDocument Of(Computation computation, Outcome outcome, Catalogue catalogue, Audience reader) => new()
    {
        Computation = computation.Name,
        Results = outcome.Results,
        Verdict = outcome.Verdict,
        Meanings =
        [
            .. catalogue.MeaningsByComputation[computation.Name].Where(meaning => outcome.Verdict is { } verdict && meaning.Verdicts.Contains(verdict))
                .Select(meaning => new MeaningDocument(meaning.Id, meaning.Text.Trade, meaning.Text.Plain, meaning.Checks, meaning.Source.ToString())),
        ],
        Notes = [.. outcome.Notes.Select(note => catalogue.Say(reader, note))],
        Formula = computation.Formula,
        Sources = [.. computation.Sources.Select(source => source.WithNote)],
    };
}
