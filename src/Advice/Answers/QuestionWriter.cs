using System.Globalization;
using Advice.Documents;
using Advice.Knowledge;
using Advice.Questions;

namespace Advice.Answers;

/// <summary>A question with what each answer would change.</summary>
internal static class QuestionWriter
{
    /// <summary>The question for that reader.</summary>
    public static QuestionDocument Write(Question question, Audience audience) => new(
        question.Symptom.Ask, question.Symptom.Id, Then(question.IfYes, audience), Then(question.IfNo, audience), Math.Round(question.Worth, 4));

    private static string Then(Prospect prospect, Audience audience)
    {
        if (prospect.Likeliest is not { } likeliest)
            return "Then nothing is suspected.";
        var fault = string.Create(
            CultureInfo.InvariantCulture, $"{likeliest.Instance.Fault.Name.For(audience)} ({Math.Round(likeliest.Probability * 100)} %)");
        return prospect.First is { } first
            ? $"Then the first step is: {first.Title.For(audience)}. Most likely: {fault}."
            : $"Most likely then: {fault}.";
    }
}
