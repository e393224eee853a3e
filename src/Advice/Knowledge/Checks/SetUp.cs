namespace Advice.Knowledge.Checks;

/// <summary>What must be arranged before a check.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="Order">Its place in the order of work: lower comes first.</param>
/// <param name="Minutes">Time to arrange it once, min.</param>
/// <param name="Includes">Set-ups that it brings with it.</param>
/// <param name="DoneBy">Who can arrange it.</param>
/// <param name="Raises">Whether it lifts the vehicle off the ground.</param>
/// <param name="Drives">Whether the vehicle is driven on the road.</param>
/// <param name="Cautions">Cautions that it calls for.</param>
public sealed record SetUp(
    string Id, string Name, int Order, int Minutes, IReadOnlyList<string> Includes, DoneBy DoneBy, bool Raises, bool Drives,
    IReadOnlyList<string> Cautions)
{
    /// <summary>Ids of the symptoms with which it is not arranged: no engine is started on the wrong fuel.</summary>
    public IReadOnlyList<string> Without { get; init; } = [];
}
