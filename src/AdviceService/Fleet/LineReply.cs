using Advice.Documents;

namespace AdviceService.Fleet;

/// <summary>What is answered to a line.</summary>
/// <param name="Json">The answer or the problem as UTF-8 JSON without a line end.</param>
/// <param name="Advice">The advice, where it was asked for in full.</param>
/// <param name="Triage">The figures, where only they were asked for.</param>
internal readonly record struct LineReply(byte[] Json, AdviceDocument? Advice, TriageDocument? Triage)
{
    /// <summary>Whether it is an answer, not a problem.</summary>
    public bool IsAnswer => Advice is not null || Triage is not null;
}
