namespace Advice.Knowledge.Codes;

/// <summary>Who says what a trouble code means.</summary>
public enum CodeScope
{
    /// <summary>The standard, for every vehicle.</summary>
    Standard,

    /// <summary>The maker of the vehicle, for its own.</summary>
    Maker,

    /// <summary>Nobody yet.</summary>
    Reserved,
}
