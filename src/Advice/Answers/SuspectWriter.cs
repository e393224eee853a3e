using Advice.Documents;

namespace Advice.Answers;

/// <summary>The faults that the case raised.</summary>
internal static class SuspectWriter
{
    private const int Most = 20;
    private const int Decimals = 4;

    /// <summary>The suspects, most probable first.</summary>
    public static IReadOnlyList<SuspectDocument> Write(Advised advised) =>
    [
        .. advised.Suspicion.Raised.Take(Most).Select(suspect => new SuspectDocument(
            suspect.Instance.Fault.Id, suspect.Instance.Fault.Name.For(advised.Case.Workshop.Reader), suspect.Instance.Fault.System,
            suspect.Instance.Place, Rounded(suspect.Probability), suspect.Instance.Fault.Deficiency, suspect.Instance.OnlyIf,
            [.. ReasonWriter.Write(suspect, advised)])),
    ];

    /// <summary>A probability as the answer shows it.</summary>
    public static double Rounded(double probability) => Math.Round(probability, Decimals);
}
