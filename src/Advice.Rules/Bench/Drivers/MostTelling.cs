using Advice.Knowledge;
using Advice.Questions;

namespace Advice.Rules.Bench.Drivers;

/// <summary>The order of the service: what tells most about what is suspected.</summary>
public sealed class MostTelling(Catalogue catalogue, Assessment assessment) : IAskingOrder
{
    private readonly QuestionChoice _questions = new(catalogue, assessment);

    /// <inheritdoc/>
    public string Name => "ours";

    /// <inheritdoc/>
    public string? Next(Advised advised, IReadOnlySet<string> asked)
    {
        ArgumentNullException.ThrowIfNull(advised);
        return _questions.OnSuspects(advised).Select(question => question.Symptom.Id).FirstOrDefault(symptom => !asked.Contains(symptom));
    }
}
