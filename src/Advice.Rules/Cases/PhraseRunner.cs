using Advice.Knowledge;
using Advice.Knowledge.Signs;
using Advice.Symptoms;

namespace Advice.Rules.Cases;

/// <summary>Reads every phrase as if a driver wrote it and nothing else: whoever writes it must be understood.</summary>
public sealed class PhraseRunner
{
    /// <summary>A word for each class.</summary>
    private static readonly (string Class, string Word)[] Words =
        [("<noise>", "squeal"), ("<stuck>", "seized"), ("<broken>", "disintegrated"), ("<failed>", "faulty"), ("<leaks>", "drips")];

    private readonly IReadOnlyList<Symptom> _symptoms;
    private readonly ComplaintReader _reader;

    /// <summary>A runner of the phrases of a rule set.</summary>
    public PhraseRunner(Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(catalogue);
        _symptoms = [.. catalogue.Symptoms.Values.OrderBy(symptom => symptom.Id, StringComparer.Ordinal)];
        _reader = new(catalogue);
    }

    /// <summary>How many phrases there are.</summary>
    public int Count => _symptoms.Sum(symptom => symptom.Phrases.Count);

    /// <summary>The phrases that are not read as their own symptom, by symptom. Several may be read in one phrase if its own is among them.</summary>
    public IReadOnlyList<MisreadPhrase> Misread() =>
    [
        .. _symptoms.SelectMany(symptom => symptom.Phrases, (symptom, phrase) => (symptom.Id, Said: Say(phrase))).AsParallel().AsOrdered()
            .Select(one => new MisreadPhrase(one.Id, one.Said, [.. _reader.Read(one.Said).Reports.Where(report => report.Present).Select(report => report.Symptom)]))
            .Where(one => !one.ReadAs.Contains(one.Symptom)),
    ];

    /// <summary>The phrase with a word for each class: another symptom's phrase may hold that word and then wins.</summary>
    private static string Say(string phrase) =>
        Words.Aggregate(phrase, (said, word) => said.Replace(word.Class, word.Word, StringComparison.Ordinal));
}
