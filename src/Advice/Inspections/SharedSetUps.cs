using System.Numerics;
using Advice.Knowledge.Checks;

namespace Advice.Inspections;

/// <summary>Set-ups as bits: each is arranged once, however many checks need it.</summary>
internal sealed class SharedSetUps
{
    private readonly Dictionary<string, int> _bits;
    private readonly int[] _minutes;

    public SharedSetUps(IReadOnlyList<SetUp> setUps)
    {
        if (setUps.Count > 64)
            throw new ArgumentException("There may be at most 64 set-ups.", nameof(setUps));
        _bits = setUps.Index().ToDictionary(one => one.Item.Id, one => one.Index);
        _minutes = [.. setUps.Select(setUp => setUp.Minutes)];
    }

    /// <summary>The set-ups of a check.</summary>
    public ulong Of(Check check) => check.Needs.Aggregate(0UL, (all, need) => all | (1UL << _bits[need.Id]));

    /// <summary>Time to arrange those, min.</summary>
    public int Minutes(ulong setUps)
    {
        var minutes = 0;
        for (; setUps != 0; setUps &= setUps - 1)
            minutes += _minutes[BitOperations.TrailingZeroCount(setUps)];
        return minutes;
    }
}
