namespace Advice.Knowledge.Checks;

/// <summary>The least training that a piece of work needs.</summary>
public enum DoneBy
{
    /// <summary>An owner in a driveway.</summary>
    Owner,

    /// <summary>A technician, with a lift where one is needed.</summary>
    Technician,
}
