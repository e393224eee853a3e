namespace Advice.Rules.Files;

/// <summary>What a node is, as bytes say it.</summary>
internal enum NodeShape : byte
{
    /// <summary>A mapping.</summary>
    Mapping,

    /// <summary>A list.</summary>
    List,

    /// <summary>A word, number or text without quotes.</summary>
    PlainScalar,

    /// <summary>A text in quotes.</summary>
    QuotedScalar,
}
