using Advice.Documents.Judgements;
using Advice.Knowledge;
using Advice.Knowledge.Limits;

namespace Advice.Answers;

/// <summary>Judgements with the cautions for whoever puts right what was found.</summary>
internal sealed class JudgementWriter(Catalogue catalogue)
{
    private readonly CautionWriter _cautions = new(catalogue);

    /// <summary>The judgements of a case.</summary>
    public IReadOnlyList<JudgementDocument> Write(IReadOnlyList<JudgementDocument> judgements, Advised advised) =>
    [
        .. judgements.Select(judgement => judgement is { Latest: true, Deficiency: not null and not Deficiency.None }
            ? judgement with { Cautions = _cautions.Of(catalogue.Checks[judgement.Check], advised) }
            : judgement),
    ];
}
