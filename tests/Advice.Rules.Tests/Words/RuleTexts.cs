using System.Text.RegularExpressions;
using Advice.Rules.Files;
using Advice.Rules.RuleSets;

namespace Advice.Rules.Tests.Words;

/// <summary>
/// The texts of the rule files, and whether another text is made of them: one of them, a wording whose slots are filled with such, or several
/// joined by punctuation, "and" or "or". Numbers and single words (ids, units, days) may stand anywhere.
/// </summary>
internal sealed partial class RuleTexts
{
    private readonly HashSet<string> _texts = new(StringComparer.Ordinal);
    private readonly List<Regex> _wordings;
    private readonly Dictionary<string, bool> _known = new(StringComparer.Ordinal);

    public RuleTexts(string directory)
    {
        foreach (var file in RuleSetLoader.Parse(directory).Nodes)
            Add(file);
        _wordings = [.. RuleSetLoader.Load(directory).Catalogue.Wordings.Values.SelectMany(wording => new[] { wording.Text.Trade, wording.Text.Plain }).Distinct()
            .Where(text => text.Contains('{', StringComparison.Ordinal)).SelectMany(text => new[] { Pattern(text, "(.+)"), Pattern(text, "(.+?)") })];
    }

    /// <summary>Whether a text is made of them.</summary>
    public bool Make(string text)
    {
        text = text.Trim();
        if (!text.Contains(' ', StringComparison.Ordinal) || Amount().IsMatch(text) || _texts.Contains(Bare(text)) || _texts.Contains(text.Replace(' ', '-')))
            return true;
        if (!_known.TryGetValue(text, out var made))
            _known[text] = made = Filled(text) || Joined(text) || Bracketed(text) || (text[^1] == '.' && Make(text[..^1]));
        return made;
    }

    private bool Filled(string text) => _wordings.Exists(wording => wording.Match(text) is { Success: true } match && match.Groups.Values.Skip(1).All(slot => Make(slot.Value)));

    private bool Joined(string text) => Joint().Matches(text).Any(joint => joint.Index > 0 && Make(text[..joint.Index]) && Make(text[(joint.Index + joint.Length)..]));

    private bool Bracketed(string text) => text[^1] == ')' && text.LastIndexOf(" (", StringComparison.Ordinal) is > 0 and var open && Make(text[..open]) && Make(text[(open + 2)..^1]);

    private void Add(Node node)
    {
        switch (node)
        {
            case ScalarNode text:
                _texts.Add(Bare(text.Value));
                break;
            case ListNode list:
                foreach (var item in list.Items)
                    Add(item);
                break;
            case MappingNode mapping:
                foreach (var (_, value) in mapping.Members)
                    Add(value);
                break;
        }
    }

    /// <summary>A text without what depends on where it stands: capital letter and full stop.</summary>
    private static string Bare(string text) => text.Trim().TrimEnd('.') is { Length: > 0 } bare ? char.ToLowerInvariant(bare[0]) + bare[1..] : "";

    private static Regex Pattern(string text, string slot) =>
        new($"^{string.Join(slot, Slot().Split(text).Select(Regex.Escape))}$", RegexOptions.CultureInvariant | RegexOptions.Singleline | RegexOptions.IgnoreCase);

    [GeneratedRegex(@"\{[a-zA-Z]+\}")]
    private static partial Regex Slot();

    [GeneratedRegex(@"^[-−]?[\d.,]+ \S+$")]
    private static partial Regex Amount();

    [GeneratedRegex(@"(?<=[.?!)]) |[,;:] | and | or ")]
    private static partial Regex Joint();
}
