using Advice.Arithmetic;

namespace AdviceService.Catalogues;

/// <summary>A piece of workshop arithmetic.</summary>
/// <param name="Name">Its name; posted to at /v1/arithmetic/{name}.</param>
/// <param name="Title">What it computes.</param>
/// <param name="Formula">The formula or rule.</param>
/// <param name="Sources">Where formula and figures come from.</param>
/// <param name="Inputs">What it takes.</param>
/// <param name="Verdicts">The classes that it can give; empty where it gives none.</param>
public sealed record ComputationEntry(
    string Name, string Title, string Formula, IReadOnlyList<string> Sources, IReadOnlyList<InputEntry> Inputs, IReadOnlyList<string> Verdicts)
{
    /// <summary>Every computation, by name.</summary>
    public static IReadOnlyList<ComputationEntry> All { get; } =
    [
        .. Computations.All.Select(computation => new ComputationEntry(
            computation.Name, computation.Title, computation.Formula, [.. computation.Sources.Select(source => source.WithNote)],
            [.. computation.Inputs.Select(InputEntry.Of)], computation.Verdicts)),
    ];
}
