namespace Advice.Knowledge.Checks;

/// <summary>How the two sides of an axle are compared.</summary>
public enum AxleComparison
{
    /// <summary>The larger less the smaller, in the unit of the limit.</summary>
    Difference,

    /// <summary>That difference in percent of the larger.</summary>
    Share,
}
