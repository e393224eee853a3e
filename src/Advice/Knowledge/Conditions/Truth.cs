namespace Advice.Knowledge.Conditions;

/// <summary>A three-valued answer: what was not reported is neither true nor false.</summary>
public enum Truth
{
    /// <summary>False.</summary>
    No,

    /// <summary>Not known.</summary>
    Unknown,

    /// <summary>True.</summary>
    Yes,
}
