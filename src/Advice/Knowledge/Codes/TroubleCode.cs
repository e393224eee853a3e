using Advice.Knowledge.Words;

namespace Advice.Knowledge.Codes;

/// <summary>A generic trouble code that the rules use.</summary>
public sealed record TroubleCode(string Id, Text Meaning, string System)
{
    /// <summary>Share of such codes that no listed fault explains.</summary>
    public const double UnexplainedShare = 0.05;
}
