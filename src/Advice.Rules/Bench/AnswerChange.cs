using Advice.Documents;
using Advice.Knowledge;
using Advice.Rules.Checking;

namespace Advice.Rules.Bench;

/// <summary>What two rule sets answer differently to one request. A member is null where they agree.</summary>
/// <param name="First">The first step, then and now.</param>
/// <param name="Suspect">The first suspect, then and now.</param>
/// <param name="Driving">The driving advice, then and now.</param>
/// <param name="CautionsLost">Ids of cautions that are no longer given.</param>
public sealed record AnswerChange(
    (string Was, string Is)? First, (string Was, string Is)? Suspect, (DrivingAdvice Was, DrivingAdvice Is)? Driving, IReadOnlyList<string> CautionsLost)
{
    private const string None = "none";

    /// <summary>Whether they answer alike as far as is compared.</summary>
    public bool IsNone => First is null && Suspect is null && Driving is null && CautionsLost.Count == 0;

    /// <summary>Whether driving is limited less than before, which an author must not overlook.</summary>
    public bool IsLaxer => Driving is { } driving && driving.Is < driving.Was;

    /// <summary>The change from one answer to another.</summary>
    public static AnswerChange Between(AdviceDocument was, AdviceDocument now)
    {
        ArgumentNullException.ThrowIfNull(was);
        ArgumentNullException.ThrowIfNull(now);
        return new AnswerChange(
            Pair(Step(was), Step(now)),
            Pair(Fault(was), Fault(now)),
            was.Driving.Advice == now.Driving.Advice ? null : (was.Driving.Advice, now.Driving.Advice),
            [.. was.Cautions.Select(caution => caution.Id).Except(now.Cautions.Select(caution => caution.Id))]);
    }

    /// <summary>The change in one line.</summary>
    public override string ToString() => string.Join("; ", Parts());

    private static string? Step(AdviceDocument advice) => advice.Steps is [var first, ..] ? first.Check : null;

    private static string? Fault(AdviceDocument advice) => advice.Suspects is [var first, ..] ? first.Fault : null;

    private static (string Was, string Is)? Pair(string? was, string? now) => was == now ? null : (was ?? None, now ?? None);

    private IEnumerable<string> Parts()
    {
        if (Driving is { } driving)
            yield return $"driving {FormatWords.Of(driving.Was)} → {FormatWords.Of(driving.Is)}{(IsLaxer ? " (laxer)" : "")}";
        if (First is { } first)
            yield return $"first step {first.Was} → {first.Is}";
        if (Suspect is { } suspect)
            yield return $"suspect {suspect.Was} → {suspect.Is}";
        if (CautionsLost.Count > 0)
            yield return $"without the cautions {string.Join(", ", CautionsLost)}";
    }
}
