namespace Advice.Rules.Files;

/// <summary>Named members, in the order of the file; no name occurs twice.</summary>
internal sealed record MappingNode(Place Place, IReadOnlyList<(ScalarNode Key, Node Value)> Members) : Node(Place)
{
    /// <inheritdoc/>
    public override string Shape => "a mapping";

    /// <summary>The value of a member, if it is there.</summary>
    public Node? this[string member]
    {
        get
        {
            foreach (var (key, value) in Members)
            {
                if (key.Value == member)
                    return value;
            }

            return null;
        }
    }
}
