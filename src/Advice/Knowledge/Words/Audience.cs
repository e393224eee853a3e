namespace Advice.Knowledge.Words;

/// <summary>For whom a text is written.</summary>
public enum Audience
{
    /// <summary>Someone who owns the vehicle and has no trade training.</summary>
    Owner,

    /// <summary>Someone of the trade.</summary>
    Technician,
}
