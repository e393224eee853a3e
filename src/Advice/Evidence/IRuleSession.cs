namespace Advice.Evidence;

/// <summary>The rules at work on one case.</summary>
public interface IRuleSession
{
    /// <summary>First stage: which knowledge applies to the case. Call once.</summary>
    CaseEvidence Gather();

    /// <summary>Second stage: what follows for cautions and driving once faults are suspected and checks advised. Call once, after
    /// <see cref="Gather"/>.</summary>
    /// <param name="suspected">Probability by fault id.</param>
    /// <param name="checks">Ids of the advised checks.</param>
    Conclusions Conclude(IReadOnlyDictionary<string, double> suspected, IReadOnlyCollection<string> checks);
}
