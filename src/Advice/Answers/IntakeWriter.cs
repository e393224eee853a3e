using Advice.Documents;
using Advice.Documents.Understood;
using Advice.Evidence;
using Advice.Intake;
using Advice.Knowledge.Words;
using Advice.Questions;
using Advice.Symptoms;
using Advice.Symptoms.Mentions;

namespace Advice.Answers;

/// <summary>Puts what was read into a document.</summary>
internal sealed class IntakeWriter(IRuleBook rules, OverlayWriter overlays)
{
    private readonly CodeDecoder _codes = new(rules.Catalogue);
    private readonly ClarifyingQuestions _clarifying = new(rules.Catalogue);
    private readonly RuleSetStamp _ruleSet = RuleSetStamp.Of(rules);

    /// <summary>The document.</summary>
    /// <param name="reading">What was read.</param>
    /// <param name="advised">What was concluded from it.</param>
    /// <param name="questions">What would tell most about the suspects of the case.</param>
    public IntakeDocument Write(CaseReading reading, Advised advised, IReadOnlyList<Question> questions)
    {
        var (@case, audience) = (reading.Case, reading.Case.Workshop.Reader);
        return new IntakeDocument
        {
            AsOf = @case.AsOf,
            Program = AdviceWriter.Program,
            RuleSet = _ruleSet,
            Symptoms = [.. @case.Reports.OrderBy(report => report.Start ?? -1).Select(report => Symptom(report, @case.AsOf, audience))],
            Systems = [.. Systems(reading.Complaint.Mentions, audience)],
            TroubleCodes = [.. reading.Stored.Select(code => _codes.Decode(code, @case))],
            Services =
            [
                .. reading.Complaint.Services.Select(heard => new ServiceHeard(
                    heard.Item, heard.System, heard.Done, Day(@case.AsOf, heard.DaysAgo), heard.KmAgo is { } km ? Math.Round(km) : null, heard.Words, heard.Start, heard.End)),
            ],
            Judgements = reading.Judgements,
            FreezeFrameLeft = reading.FreezeFrameLeft,
            NotUnderstood = [.. reading.Complaint.Unread.Select(unread => new UnreadText(unread.Text, unread.Start, unread.End, Guesses(unread.Guesses, audience)))],
            Questions = [.. _clarifying.Of(reading, questions)],
            FromOverlays = overlays.Write(Naming.Intake, reading, advised, new([], reading.Complaint.Services.Select(heard => heard.Item).OfType<string>(), reading.Judgements)),
        };
    }

    private static DateOnly? Day(DateOnly asOf, int? daysAgo) => daysAgo is { } days ? asOf.AddDays(-days) : null;

    private IntakeSymptom Symptom(Report report, DateOnly asOf, Audience audience) => new(
        report.Symptom, rules.Catalogue.Symptoms[report.Symptom].Name.For(audience), report.Occasions, report.Position, report.Present,
        report.Since?.Words, Day(asOf, report.Since?.DaysAgo), report.Intermittent, report.Words, report.Start, report.End,
        Math.Round(report.Confidence, 2), Guesses(report.Alternatives, audience));

    private IReadOnlyList<SymptomGuess> Guesses(IReadOnlyList<Guess> guesses, Audience audience) =>
        [.. guesses.Select(guess => new SymptomGuess(guess.Symptom, rules.Catalogue.Symptoms[guess.Symptom].Name.For(audience), guess.Confidence))];

    private IEnumerable<SystemHint> Systems(IReadOnlyList<SystemMention> mentions, Audience audience) =>
        from system in rules.Catalogue.Systems
        let own = mentions.Where(mention => mention.System == system.Id).ToList()
        where own.Count > 0
        let weight = Math.Round(own.Sum(mention => mention.Weight), 2)
        orderby weight descending
        select new SystemHint(
            system.Id, system.Name.For(audience), weight, [.. own.Select(mention => new Mention(mention.Words, mention.Start, mention.End))]);
}
