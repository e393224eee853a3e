using Advice.Documents;
using Advice.Documents.Judgements;
using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Conditions;

namespace Advice.Answers;

/// <summary>Cautions: those that the case calls for, then those of the steps and judgements. None is cut but what this vehicle cannot do to anyone.</summary>
internal sealed class CautionWriter(Catalogue catalogue)
{
    /// <summary>Every caution of the answer, once.</summary>
    public IReadOnlyList<CautionDocument> Write(Advised advised, IEnumerable<JudgementDocument> judgements) =>
    [
        .. advised.Cautions.Where(rule => rule.Checks.Count == 0).Select(rule => rule.Caution)
            .Concat(advised.Steps.SelectMany(step => Of(step.Check, advised))).Concat(judgements.SelectMany(judgement => judgement.Cautions)).Distinct().Where(id => Concerns(id, advised))
            .Select(id => new CautionDocument(id, catalogue.Cautions[id].Text.For(advised.Case.Workshop.Reader))),
    ];

    /// <summary>Ids of the cautions of a check on this vehicle.</summary>
    public IReadOnlyList<string> Of(Check check, Advised advised) =>
    [
        .. check.Cautions.Concat(advised.Cautions.Where(rule => rule.Checks.Contains(check.Id)).Select(rule => rule.Caution)).Distinct()
            .Where(id => Concerns(id, advised)),
    ];

    private bool Concerns(string caution, Advised advised) => catalogue.Cautions[caution].When.Test(advised.Case.Vehicle) != Truth.No;
}
