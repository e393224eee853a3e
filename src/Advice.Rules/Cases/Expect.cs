using Advice.Documents;
using Advice.Documents.Judgements;
using Advice.Knowledge;
using Advice.Knowledge.Limits;
using Advice.Rules.Checking;

namespace Advice.Rules.Cases;

/// <summary>The kinds of expectation that a case may have.</summary>
internal static class Expect
{
    /// <summary>The first step is one of these checks.</summary>
    public static Expectation First(IReadOnlyList<string> checks) => new(
        $"first: {Any(checks)}",
        advice => advice.Steps.Count > 0 && checks.Contains(advice.Steps[0].Check),
        advice => AnswerText.Steps(advice.Steps.Take(1).Concat(advice.Steps.Where(step => checks.Contains(step.Check)))));

    /// <summary>All of these checks are among so many first steps.</summary>
    public static Expectation Among(int first, IReadOnlyList<string> checks) => new(
        $"among the first {first}: {AnswerText.List(checks)}",
        advice => checks.All(check => advice.Steps.Take(first).Any(step => step.Check == check)),
        advice => AnswerText.Steps(advice.Steps.Take(first).Concat(advice.Steps.Skip(first).Where(step => checks.Contains(step.Check)))));

    /// <summary>None of these checks and faults appears anywhere.</summary>
    public static Expectation Never(IReadOnlyList<string> ids) => new(
        $"never: {AnswerText.List(ids)}",
        advice => !Appearing(advice, ids).Any(),
        advice => AnswerText.Lines(Appearing(advice, ids)));

    /// <summary>The first suspect is one of these faults.</summary>
    public static Expectation Suspect(IReadOnlyList<string> faults) => new(
        $"suspect: {Any(faults)}",
        advice => advice.Suspects.Count > 0 && faults.Contains(advice.Suspects[0].Fault),
        AnswerText.Suspects);

    /// <summary>All of these cautions are given.</summary>
    public static Expectation Cautions(IReadOnlyList<string> cautions) => new(
        $"cautions: {AnswerText.List(cautions)}",
        advice => cautions.All(advice.Cautions.Select(one => one.Id).Contains),
        advice => AnswerText.List(advice.Cautions.Select(one => one.Id)));

    /// <summary>None of these cautions is given.</summary>
    public static Expectation NoCautions(IReadOnlyList<string> cautions) => new(
        $"no cautions: {AnswerText.List(cautions)}",
        advice => !advice.Cautions.Any(one => cautions.Contains(one.Id)),
        advice => AnswerText.List(advice.Cautions.Where(one => cautions.Contains(one.Id)).Select(one => AnswerText.Caution(advice, one.Id))));

    /// <summary>The driving advice is one of these.</summary>
    public static Expectation Driving(IReadOnlyList<DrivingAdvice> advices) => new(
        $"driving: {Any([.. advices.Select(one => AnswerText.Camel(one.ToString()))])}",
        advice => advices.Contains(advice.Driving.Advice),
        AnswerText.Driving);

    /// <summary>The answer says by all of these rules that something is no fault.</summary>
    public static Expectation Normal(IReadOnlyList<string> rules) => new(
        $"normal: {AnswerText.List(rules)}",
        advice => rules.All(advice.Normal.Select(one => one.Rule).Contains),
        advice => AnswerText.List(advice.Normal.Select(one => one.Rule)));

    /// <summary>The worst that the findings of a check are judged as, each by itself and left against right, is this class.</summary>
    public static Expectation Judged(string check, Deficiency deficiency) => new(
        $"judged: {check} {FormatWords.Of(deficiency)}",
        advice => Judgements(advice, check).Select(one => one.Deficiency).DefaultIfEmpty(null).Max() == deficiency,
        advice => AnswerText.List(Judgements(advice, check).Select(AnswerText.Judgement)));

    private static IEnumerable<JudgementDocument> Judgements(AdviceDocument advice, string check) =>
        advice.Judgements.Concat(advice.AcrossAxles).Where(one => one.Check == check);

    private static IEnumerable<string> Appearing(AdviceDocument advice, IReadOnlyList<string> ids) =>
        advice.Steps.Where(step => ids.Contains(step.Check) || step.Suspects.Any(one => ids.Contains(one.Fault))).Select(AnswerText.Step)
            .Concat(advice.Suspects.Where(one => ids.Contains(one.Fault)).Select(AnswerText.Suspect));

    private static string Any(IReadOnlyList<string> words) => string.Join(" or ", words);
}
