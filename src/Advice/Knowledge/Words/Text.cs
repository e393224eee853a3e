namespace Advice.Knowledge.Words;

/// <summary>One statement in the trade's words and in an owner's.</summary>
/// <param name="Trade">For the technician.</param>
/// <param name="Plain">For the owner; the same as <paramref name="Trade"/> where the author gave one text only.</param>
public sealed record Text(string Trade, string Plain)
{
    /// <summary>The wording for that reader.</summary>
    public string For(Audience audience) => audience == Audience.Owner ? Plain : Trade;
}
