namespace Advice.Rules.Files;

/// <summary>A word, number or text.</summary>
/// <param name="Place">Where it stands.</param>
/// <param name="Value">Its text.</param>
/// <param name="Plain">Whether it stands without quotes, so that it may be a number or a truth value.</param>
internal sealed record ScalarNode(Place Place, string Value, bool Plain) : Node(Place)
{
    /// <inheritdoc/>
    public override string Shape => Value.Length == 0 ? "nothing" : $"'{Value}'";
}
