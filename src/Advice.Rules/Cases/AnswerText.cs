using System.Globalization;
using Advice.Documents;
using Advice.Documents.Judgements;
using Advice.Rules.Checking;

namespace Advice.Rules.Cases;

/// <summary>Parts of an answer in one line each, with the ids of the rules that are their reasons.</summary>
internal static class AnswerText
{
    private const int MostSuspects = 5;

    /// <summary>Symptoms and codes as they were read, and what was not.</summary>
    public static string Understood(AdviceDocument advice)
    {
        var symptoms = advice.Understood.Symptoms.Select(one =>
            $"{(one.Present ? "" : "no ")}{one.Symptom}{string.Concat(one.Occasions.Select(occasion => $" @{occasion}"))}{(one.Position is null ? "" : $" ({one.Position})")}");
        var missed = advice.Understood.NotUnderstood.Select(words => $"not \"{words}\"");
        return List(symptoms.Concat(advice.Understood.TroubleCodes.Select(one => one.Code)).Concat(missed));
    }

    /// <summary>Those of the steps, each in a line with the suspects that it looks for and their rules.</summary>
    public static string Steps(IEnumerable<StepDocument> steps) => Lines(steps.Select(Step));

    /// <summary>One step with its rank.</summary>
    public static string Step(StepDocument step) =>
        $"{step.Rank} {step.Check} [{string.Join(' ', step.Suspects.Take(2).Select(one => $"{one.Fault} {Number(one.Probability)}"))}: {Rules(step.Reasons)}]";

    /// <summary>The leading suspects with their rules.</summary>
    public static string Suspects(AdviceDocument advice) => Lines(advice.Suspects.Take(MostSuspects).Select(Suspect));

    /// <summary>One suspect with its rules.</summary>
    public static string Suspect(SuspectDocument one) => $"{one.Fault} {Number(one.Probability)} [{Rules(one.Reasons)}]";

    /// <summary>The driving advice with its rules.</summary>
    public static string Driving(AdviceDocument advice) => $"{Camel(advice.Driving.Advice.ToString())} [{Rules(advice.Driving.Because)}]";

    /// <summary>Who calls for a caution.</summary>
    public static string Caution(AdviceDocument advice, string caution)
    {
        var steps = advice.Steps.Where(step => step.Cautions.Contains(caution)).Select(step => step.Check).ToList();
        return $"{caution} [{(steps.Count == 0 ? "the case itself" : string.Join(' ', steps))}]";
    }

    /// <summary>What one finding was judged as, and by what.</summary>
    public static string Judgement(JudgementDocument one) =>
        $"{(one.Deficiency is { } known ? FormatWords.Of(known) : "not judged")}{(one.Position is null ? "" : $" ({one.Position})")} [{one.Limit ?? one.Note}]";

    /// <summary>Words with commas between them.</summary>
    public static string List(IEnumerable<string> words) => string.Join(", ", words) is { Length: > 0 } text ? text : "nothing";

    /// <summary>One in each line, below what stands before the first.</summary>
    public static string Lines(IEnumerable<string> items) => string.Join("\n           ", items) is { Length: > 0 } text ? text : "nothing";

    /// <summary>A word with a small first letter, as it stands in files.</summary>
    public static string Camel(string word) => char.ToLowerInvariant(word[0]) + word[1..];

    private static string Rules(IEnumerable<ReasonDocument> reasons) => string.Join(' ', reasons.Select(reason => reason.Rule));

    private static string Number(double probability) => probability.ToString("0.00", CultureInfo.InvariantCulture);
}
