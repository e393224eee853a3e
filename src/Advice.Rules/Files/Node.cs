namespace Advice.Rules.Files;

/// <summary>A node of a rule file, with its place.</summary>
internal abstract record Node(Place Place)
{
    /// <summary>What it is, for messages.</summary>
    public abstract string Shape { get; }
}
