using Advice.Knowledge.Limits;

namespace Advice.Suspects;

/// <summary>A fault instance with what the signs made of it.</summary>
/// <param name="Instance">The instance.</param>
/// <param name="Probability">Its probability given all that is known.</param>
public sealed record Suspect(FaultInstance Instance, double Probability)
{
    private const double UrgentProbability = 0.05;
    private const double UrgentRaise = 3;

    /// <summary>Whether it could make the vehicle unsafe now and the signs, not the base rate, say so.</summary>
    public bool IsUrgent => Instance.Fault.Deficiency == Deficiency.Dangerous && Probability >= UrgentProbability
        && Probability >= UrgentRaise * Instance.Prior;

    /// <summary>How far the signs raised it above its prior, 0 or more.</summary>
    public double Raise => Math.Max(0, Probability - Instance.Prior);

    /// <summary>Expected harm that the case, not the base rate, adds.</summary>
    public double Weight => Raise * Instance.Fault.Consequence.Harm;
}
