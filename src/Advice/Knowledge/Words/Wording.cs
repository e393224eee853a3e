using System.Globalization;
using System.Text;

namespace Advice.Knowledge.Words;

/// <summary>The words of a sentence, with a place for each of its slots.</summary>
/// <param name="Sentence">The sentence.</param>
/// <param name="Text">Its words; a slot stands in braces, as in "First step: {step}."</param>
public sealed record Wording(Sentence Sentence, Text Text)
{
    private readonly CompositeFormat _trade = Format(Sentence, Text.Trade);
    private readonly CompositeFormat _plain = Format(Sentence, Text.Plain);

    /// <summary>The sentence for that reader.</summary>
    public string For(Audience audience, params ReadOnlySpan<object?> slots) =>
        string.Format(CultureInfo.InvariantCulture, audience == Audience.Owner ? _plain : _trade, slots);

    private static CompositeFormat Format(Sentence sentence, string text) => CompositeFormat.Parse(
        sentence.Slots.Index().Aggregate(text, (so, slot) => so.Replace($"{{{slot.Item}}}", $"{{{slot.Index}}}", StringComparison.Ordinal)));
}
