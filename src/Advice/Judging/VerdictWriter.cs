using Advice.Documents.Judgements;
using Advice.Knowledge;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Words;

namespace Advice.Judging;

/// <summary>A judgement on a measured value in words.</summary>
internal sealed class VerdictWriter(Catalogue catalogue)
{
    /// <summary>The judgement.</summary>
    public JudgementDocument Write(string check, string? position, Verdicts verdicts, Case @case)
    {
        var (decisive, reader) = (verdicts.Decisive, @case.Workshop.Reader);
        return new JudgementDocument
        {
            Check = check,
            Position = position,
            Judged = true,
            Deficiency = decisive.Deficiency,
            Action = catalogue.Say(reader, DeficiencyWords.Action(decisive.Deficiency)),
            Limit = decisive.Limit.Text.For(reader),
            Value = Rounded(decisive.Value),
            Margin = Rounded(decisive.Margin),
            Unit = decisive.Limit.Unit,
            Source = decisive.Limit.Source.ToString(),
            Limits = [.. verdicts.All.Select(verdict => Applied(verdict, reader))],
            Note = Note(verdicts, @case),
        };
    }

    private static AppliedLimit Applied(LimitVerdict verdict, Audience reader) => new(
        verdict.Limit.Text.For(reader), verdict.Deficiency, Rounded(verdict.Margin), verdict.Limit.Unit, verdict.Limit.Jurisdiction,
        verdict.Limit.Source.ToString());

    private static double Rounded(double value) => Math.Round(value, 4);

    private string? Note(Verdicts verdicts, Case @case)
    {
        var (decisive, reader) = (verdicts.Decisive, @case.Workshop.Reader);
        List<string> sentences =
        [
            .. decisive.Limit.When.Tests.Where(test => test.Test(@case.Vehicle) == Truth.Unknown).Select(test => test.Fact.Name).Distinct()
                .Select(name => catalogue.Say(reader, Sentences.StrictestTaken, name)),
        ];
        if (decisive.Deficiency == Deficiency.Minor && !decisive.IsLaw && verdicts.All.Any(verdict => verdict.IsLaw && verdict.Deficiency == Deficiency.None))
            sentences.Add(catalogue.Say(reader, Sentences.TradeAdvisesMore));
        if (decisive.Deficiency == Deficiency.None && verdicts.All.FirstOrDefault(verdict => verdict.IsLaw && verdict.Deficiency > Deficiency.None) is { } broken)
            sentences.Add(catalogue.Say(reader, Sentences.LawNotMet, broken.Limit.Jurisdiction, broken.Limit.Text.For(reader)));
        return sentences.Count == 0 ? null : string.Join(' ', sentences);
    }
}
