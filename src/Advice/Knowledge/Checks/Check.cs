using Advice.Knowledge.Signs;
using Advice.Knowledge.Words;

namespace Advice.Knowledge.Checks;

/// <summary>Something to inspect, observe or measure.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Title">What to do, in a few words.</param>
/// <param name="System">Id of the system.</param>
/// <param name="Area">Where one works.</param>
/// <param name="Places">Positions at which it can be done; empty = it has no place.</param>
/// <param name="Minutes">Time for the check itself at all places, min.</param>
/// <param name="DoneBy">Who can do it.</param>
/// <param name="Needs">Set-ups that it needs, in order of work, with all that those include.</param>
/// <param name="Tools">Tools.</param>
/// <param name="Method">What to do, in order.</param>
/// <param name="Measure">What it measures, for a measured check.</param>
/// <param name="Observations">Its closed scale, for an observed check.</param>
/// <param name="Detects">What it finds.</param>
/// <param name="FalseAlarm">Share of sound vehicles that look bad all the same.</param>
/// <param name="Cautions">Ids of its cautions, those of the set-ups included.</param>
/// <param name="ReadsCodes">Whether it only reads trouble codes, so that a caller who gives some has done it.</param>
public sealed record Check(
    string Id, Text Title, string System, Area Area, IReadOnlyList<string> Places, int Minutes, DoneBy DoneBy,
    IReadOnlyList<SetUp> Needs, IReadOnlyList<string> Tools, IReadOnlyList<string> Method, Measure? Measure,
    IReadOnlyList<Observation> Observations, IReadOnlyList<Detects> Detects, double FalseAlarm, IReadOnlyList<string> Cautions,
    bool ReadsCodes)
{
    /// <summary>Ids of the symptoms with which it is not done, those of its set-ups included: while one of them is reported it would do harm or tell nothing.</summary>
    public IReadOnlyList<string> Without { get; init; } = [];

    /// <summary>The workshop arithmetic that its findings go into, in order; empty = none.</summary>
    public IReadOnlyList<CheckArithmetic> Arithmetic { get; init; } = [];

    /// <summary>How its value is taken from a freeze frame; null = not from one.</summary>
    public FrameSource? FreezeFrame { get; init; }

    /// <summary>Its abnormal values: beyond the limit where it measures (in the words of <see cref="Catalogue.BeyondLimit"/>), else all of its scale
    /// but the normal one.</summary>
    public IEnumerable<Observation> Abnormal =>
        Measure is not null ? [new Observation(Sign.BeyondLimit, false, "")] : Observations.Where(one => !one.Normal);

    private readonly Dictionary<string, double> _surely = Detects.GroupBy(detects => detects.Fault)
        .ToDictionary(group => group.Key, group => Math.Min(1, group.Sum(detects => detects.Surely)));

    /// <summary>How surely it finds a fault, 0 … 1. The values of one scale exclude each other, so their shares add up.</summary>
    public double Surely(string fault) => _surely.GetValueOrDefault(fault);
}
