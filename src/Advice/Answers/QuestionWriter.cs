using System.Globalization;
using Advice.Documents;
using Advice.Knowledge;
using Advice.Knowledge.Words;
using Advice.Questions;

namespace Advice.Answers;

/// <summary>A question with what each answer would change.</summary>
internal sealed class QuestionWriter(Catalogue catalogue)
{
    /// <summary>The question for that reader.</summary>
    public QuestionDocument Write(Question question, Audience audience) => new(
        question.About is { } words ? catalogue.Say(audience, Sentences.AsksAbout, words, question.Symptom.Ask) : question.Symptom.Ask, question.Symptom.Id, Then(question.IfYes, Sentences.ThenNothingSuspected, audience),
        Then(question.IfNo, Sentences.ThenSomethingElse, audience), Math.Round(question.Worth, 4), question.About);

    private string Then(Prospect prospect, Sentence otherwise, Audience audience)
    {
        if (prospect.Likeliest is not { } likeliest)
            return catalogue.Say(audience, otherwise);
        var fault = string.Create(
            CultureInfo.InvariantCulture, $"{likeliest.Instance.Fault.Name.For(audience)} ({Math.Round(likeliest.Probability * 100)} %)");
        return prospect.First is { } first
            ? catalogue.Say(audience, Sentences.ThenFirstStep, first.Title.For(audience), fault)
            : catalogue.Say(audience, Sentences.ThenMostLikely, fault);
    }
}
