using Advice.Documents.Understood;
using Advice.Intake;
using Advice.Knowledge;
using Advice.Knowledge.Words;
using Advice.Questions;
using Advice.Symptoms;

namespace Advice.Answers;

/// <summary>
/// What to ask after reading a text: first what unclear words mean, then what would tell most about the suspects, then what words are merely near to.
/// Where nothing at all was understood, it asks for the systems that the text speaks of, then for what tells most about the system, then for the others.
/// </summary>
internal sealed class ClarifyingQuestions(Catalogue catalogue)
{
    private const int Most = 5;

    private readonly QuestionWriter _questions = new(catalogue);

    /// <summary>The questions, at most five, each symptom once.</summary>
    public IEnumerable<IntakeQuestion> Of(CaseReading reading, IReadOnlyList<Question> questions)
    {
        var audience = reading.Case.Workshop.Reader;
        var spoken = reading.Case.Reports.Select(report => report.Symptom).Concat(reading.Case.Unsure).ToHashSet();
        var unclear = reading.Complaint.Unread.SelectMany(unread => unread.Guesses, (unread, guess) => (guess, Words: (string?)unread.Text))
            .Concat(reading.Case.Reports.SelectMany(report => report.Alternatives, (report, guess) => (guess, report.Words)))
            .ToLookup(one => one.guess.Confidence >= ComplaintReader.LeastGuess, one => Ask(one.guess.Symptom, one.Words, audience));
        var telling = questions.Select(question => _questions.Write(question, audience))
            .Select(question => new IntakeQuestion(catalogue.Symptoms[question.Symptom].Ask, question.Symptom, question.About, question.IfYes, question.IfNo));
        var heard = reading.Case.Reports.Count > 0 || reading.Case.Codes.Count > 0 || reading.Case.Outcomes.Count > 0;
        var spokenOf = reading.Complaint.Mentions.Select(mention => mention.System).ToHashSet();
        var systems = heard ? null : Systems(reading).ToLookup(system => spokenOf.Contains(system.Id), system => Ask(system.Trouble!, null, audience));
        return unclear[true].Concat(systems?[true] ?? []).Concat(telling).Concat(unclear[false]).Concat(systems?[false] ?? [])
            .Where(question => !spoken.Contains(question.Symptom)).DistinctBy(question => question.Symptom).Take(Most);
    }

    private IEnumerable<VehicleSystem> Systems(CaseReading reading) => catalogue.Systems.Where(system => system.Trouble is not null)
        .OrderByDescending(system => reading.Complaint.Mentions.Where(mention => mention.System == system.Id).Sum(mention => mention.Weight));

    private IntakeQuestion Ask(string symptom, string? about, Audience audience)
    {
        var asked = catalogue.Symptoms[symptom];
        return new IntakeQuestion(asked.Ask, symptom, about, catalogue.Say(audience, Sentences.ThenItCounts, asked.Name.For(audience)), catalogue.Say(audience, Sentences.ThenLeftOut));
    }
}
