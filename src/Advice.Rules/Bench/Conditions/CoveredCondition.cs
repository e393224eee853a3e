namespace Advice.Rules.Bench.Conditions;

/// <summary>What the cases showed of one condition of a rule.</summary>
/// <param name="Kind">The kind of rule.</param>
/// <param name="Rule">Id of the rule.</param>
/// <param name="Condition">The condition.</param>
/// <param name="Fired">Whether the rule fired in a case in which the condition is known to hold.</param>
/// <param name="Missed">Whether it did not fire in a case in which the condition fails and all others hold.</param>
public sealed record CoveredCondition(string Kind, string Rule, string Condition, bool Fired, bool Missed)
{
    /// <summary>Whether the cases showed it both ways.</summary>
    public bool BothWays => Fired && Missed;

    /// <summary>The condition and which way is missing.</summary>
    public override string ToString() =>
        $"{Rule}: {Condition}: {(Fired ? "" : "never held in a case that it fired in")}{(Fired || Missed ? "" : ", ")}{(Missed ? "" : "never alone kept it from firing")}";
}
