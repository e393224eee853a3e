namespace Advice.Rules.Files;

/// <summary>A list.</summary>
internal sealed record ListNode(Place Place, IReadOnlyList<Node> Items) : Node(Place)
{
    /// <inheritdoc/>
    public override string Shape => "a list";
}
