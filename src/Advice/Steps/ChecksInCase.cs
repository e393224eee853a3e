using Advice.Knowledge.Checks;

namespace Advice.Steps;

/// <summary>What a case says of checks, each reckoned once: how probably its vehicle has what they need, and whether they are still to be done.</summary>
internal sealed class ChecksInCase(IReadOnlyList<Need> needs, Check[] checks, Case @case)
{
    private readonly double?[] _shares = new double?[needs.Count];
    private readonly bool?[] _open = new bool?[checks.Length];

    /// <summary>Share of such vehicles that have it.</summary>
    /// <param name="need">Place of the need among all needs.</param>
    public double Share(int need) => _shares[need] ??= needs[need].Share(@case.Vehicle);

    /// <summary>Whether a check is still worth advising.</summary>
    /// <param name="check">Place of the check among all checks by id.</param>
    public bool IsOpen(int check) => _open[check] ??= @case.IsOpen(checks[check]);
}
