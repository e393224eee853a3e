using Advice.Knowledge.Checks;
using Advice.Knowledge.Words;

namespace Advice;

/// <summary>What can be done where the vehicle is.</summary>
/// <param name="Lift">Whether there is a vehicle lift; null = not stated.</param>
/// <param name="Minutes">Time that there is, min; null = no budget.</param>
/// <param name="Worker">Who reads and works; null = not stated.</param>
public sealed record Workshop(bool? Lift, int? Minutes, Audience? Worker)
{
    /// <summary>Nothing is stated, so nothing is ruled out.</summary>
    public static Workshop NotStated { get; } = new(null, null, null);

    /// <summary>For whom to write.</summary>
    public Audience Reader => Worker ?? Audience.Owner;

    /// <summary>Whether a check can be done here, as far as is stated.</summary>
    public bool CanDo(Check check) =>
        Worker == Audience.Owner ? check.DoneBy == DoneBy.Owner && check.Needs.All(need => need.DoneBy == DoneBy.Owner)
        : Lift != false || check.Needs.All(need => need.DoneBy == DoneBy.Owner);
}
