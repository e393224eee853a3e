using Advice.Knowledge;
using Advice.Knowledge.Signs;
using Advice.Symptoms;

namespace Advice.Questions;

/// <summary>Which questions tell most for the effort that an answer costs the driver.</summary>
public sealed class QuestionChoice(Catalogue catalogue, Assessment assessment)
{
    private const int Most = 3;
    private const double LeastWorth = 0.001;

    private readonly AnsweredQuestions _answered = new(catalogue);
    private readonly SuspectWorth _suspects = new(catalogue);
    private readonly SystemWorth _systems = new(catalogue);

    // That something is wrong with a system tells no more than which one.
    private readonly HashSet<string> _vague = [.. catalogue.Systems.Select(system => system.Trouble).OfType<string>()];

    /// <summary>The questions, most useful first, ties by symptom: about what is suspected, or else about which system has the fault.</summary>
    public IReadOnlyList<Question> Choose(Advised advised)
    {
        ArgumentNullException.ThrowIfNull(advised);
        return advised.Suspicion.Raised.Count > 0 ? OnSuspects(advised) : Ask(_systems.Of(advised, IsOpen(advised)), advised);
    }

    /// <summary>The questions about what is suspected; none where nothing is.</summary>
    public IReadOnlyList<Question> OnSuspects(Advised advised)
    {
        ArgumentNullException.ThrowIfNull(advised);
        return Ask(_suspects.Of(advised, IsOpen(advised)), advised);
    }

    /// <summary>What a driver can be asked: not answered yet, and noticed by drivers themselves.</summary>
    private Func<Symptom, bool> IsOpen(Advised advised)
    {
        var answered = _answered.Of(advised);
        return symptom => double.IsFinite(symptom.Effort) && !_vague.Contains(symptom.Id) && !answered.Contains(symptom.Id);
    }

    private IReadOnlyList<Question> Ask(IEnumerable<(Symptom Symptom, double Worth)> worths, Advised advised)
    {
        var asked = worths.Select(one => (one.Symptom, Worth: one.Worth / one.Symptom.Effort))
            .Where(one => one.Worth > LeastWorth).OrderByDescending(one => Math.Round(one.Worth, 9))
            .ThenBy(one => one.Symptom.Id, StringComparer.Ordinal).Take(Most).ToList();
        var answers = assessment.Foresee(advised, asked.SelectMany(one => new[] { Answer(one.Symptom, true), Answer(one.Symptom, false) })).Chunk(2);
        return [.. asked.Zip(answers, (one, after) => new Question(one.Symptom, one.Worth, after[0], after[1])
        {
            About = advised.Case.Inklings.FirstOrDefault(inkling => inkling.Symptom == one.Symptom.Id)?.Words,
        })];
    }

    private static Report Answer(Symptom symptom, bool yes) => new(symptom.Id, [], null, yes);
}
