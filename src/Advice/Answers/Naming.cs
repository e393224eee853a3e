using Advice.Documents.Dues;
using Advice.Due;

namespace Advice.Answers;

/// <summary>What an answer of some kind names.</summary>
/// <param name="Steps">Whether it advises steps.</param>
/// <param name="Names">The service items that it names.</param>
internal sealed record Naming(bool Steps, Func<DueItem, bool> Names)
{
    /// <summary>Whether it names the services that the text speaks of.</summary>
    public bool Heard { get; init; }

    /// <summary>What was concluded, as far as an answer of this kind names it.</summary>
    public Advised Of(Advised advised) => Steps ? advised : advised with { Steps = [] };

    /// <summary>Advice on a complaint.</summary>
    public static Naming Advice { get; } = new(true, item => item.Status is DueStatus.Overdue or DueStatus.Due or DueStatus.Soon && !item.MayBeDone);

    /// <summary>An inspection.</summary>
    public static Naming Inspection { get; } = new(true, item => item.Status != DueStatus.Later);

    /// <summary>What was read.</summary>
    public static Naming Intake { get; } = new(false, _ => false) { Heard = true };

    /// <summary>What findings mean.</summary>
    public static Naming Judgements { get; } = new(false, _ => false);

    /// <summary>Figures of triage, or an explanation: suspects and steps alone.</summary>
    public static Naming Suspects { get; } = new(true, _ => false);
}
