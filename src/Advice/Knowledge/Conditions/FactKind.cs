namespace Advice.Knowledge.Conditions;

/// <summary>What kind of value a vehicle fact has.</summary>
public enum FactKind
{
    /// <summary>One word of a closed list.</summary>
    Word,

    /// <summary>True or false.</summary>
    Truth,

    /// <summary>A number.</summary>
    Number,
}
