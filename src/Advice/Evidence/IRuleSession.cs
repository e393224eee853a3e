using Advice.Knowledge.Rules;

namespace Advice.Evidence;

/// <summary>The rules at work on one case, in three stages of which each is called once, in this order.</summary>
public interface IRuleSession
{
    /// <summary>Which knowledge applies to the case.</summary>
    CaseEvidence Gather();

    /// <summary>What limits driving once faults are suspected: strictest first, then by rule.</summary>
    /// <param name="suspected">Probability by fault id.</param>
    IReadOnlyList<DrivingRule> LimitDriving(IReadOnlyDictionary<string, double> suspected);

    /// <summary>Which cautions the case calls for once checks are advised, by rule.</summary>
    /// <param name="checks">Ids of the advised checks.</param>
    IReadOnlyList<WarnsRule> Caution(IReadOnlyCollection<string> checks);
}
