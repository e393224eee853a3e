using Advice.Knowledge;

namespace Advice;

/// <summary>What can be done where the vehicle is.</summary>
/// <param name="Lift">Whether there is a vehicle lift.</param>
/// <param name="Minutes">Time that there is, min; null = no budget.</param>
/// <param name="Audience">Who reads and works.</param>
public sealed record Workshop(bool Lift, int? Minutes, Audience Audience)
{
    /// <summary>An owner without a lift and with all the time that it takes.</summary>
    public static Workshop Driveway { get; } = new(false, null, Audience.Owner);

    /// <summary>Whether a check can be done here.</summary>
    public bool CanDo(Check check) =>
        (Audience == Audience.Technician || check.DoneBy == DoneBy.Owner)
        && check.Needs.All(need => need.DoneBy == DoneBy.Owner || (Lift && Audience == Audience.Technician));
}
