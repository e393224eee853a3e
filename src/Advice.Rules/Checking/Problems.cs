using Advice.Knowledge.Words;
using Advice.Rules.Files;

namespace Advice.Rules.Checking;

/// <summary>All that was found wrong so far: an author gets the whole list at once.</summary>
internal sealed class Problems
{
    private readonly List<RuleFileError> errors = [];

    /// <summary>Whether these very entries were bound before and nothing was wrong: what only finds problems need not be asked again.</summary>
    public bool AreRuledOut { get; set; }

    /// <summary>Whether nothing is wrong.</summary>
    public bool None => errors.Count == 0;

    /// <summary>How many errors there are.</summary>
    public int Count => errors.Count;

    /// <summary>The errors by file, line and column.</summary>
    public IReadOnlyList<RuleFileError> InOrder =>
        [.. errors.OrderBy(e => e.File, StringComparer.Ordinal).ThenBy(e => e.Line).ThenBy(e => e.Column).Distinct()];

    /// <summary>Adds the error that a word stands where only certain others may.</summary>
    public void AddNoValue(Place place, string word, string member, IEnumerable<string> words) =>
        Add(ErrorCode.UnknownWord, place, $"'{word}' is no value of '{member}'; it is one of {string.Join(", ", words)}", Meant(word, words) ?? NearestWord.To(word, words));

    /// <summary>Adds all that another list holds.</summary>
    public void Add(Problems others) => errors.AddRange(others.errors);

    /// <summary>Adds what several checks find that run side by side, in their order. They look at the same entries and wait for nothing.</summary>
    public void AddAll(params Action<Problems>[] checks)
    {
        var found = Array.ConvertAll(checks, _ => new Problems());
        Parallel.For(0, checks.Length, i => checks[i](found[i]));
        foreach (var one in found)
            Add(one);
    }

    /// <summary>Adds an error or, by its code, a warning.</summary>
    public void Add(string code, Place place, string message, string? nearest = null) =>
        errors.Add(new RuleFileError(place.File, place.Line, place.Column, code, message, nearest));

    /// <summary>What people also write for the two truth values.</summary>
    private static string? Meant(string word, IEnumerable<string> words) =>
        word.ToUpperInvariant() switch { "YES" or "ON" or "TRUE" => "true", "NO" or "OFF" or "FALSE" => "false", _ => null } is { } truth && words.Contains(truth) ? truth : null;
}
