using Advice.Documents;
using Advice.Documents.Requests;
using Advice.Knowledge.Signs;

namespace Advice.Rules.Tests.Questions;

/// <summary>A driver is not asked what the complaint said; where it may have said so, the question quotes it.</summary>
public class SaidAlreadyTests
{
    private static readonly GiveAdvice Advice = new(RepositoryRules.Book, TimeProvider.System);

    /// <summary>By a finer symptom, by words within other words, by the occasion, by the sentence as a whole, or by a denial.</summary>
    [Theory]
    [InlineData("The steering wheel vibrates between 55 and 65", "vibration")]
    [InlineData("The steering wheel shakes at 60 mph", "shake-at-speed")]
    [InlineData("The steering wheel shakes when I brake from speed", "brake-pulsation")]
    [InlineData("When I brake the car dives to the left side", "pulls-to-side")]
    [InlineData("It pulls to one side only when braking", "pulls-when-braking")]
    [InlineData("Grinding noise from the back when I stop", "brakes-grind", "brake-noise", "brake-squeal")]
    [InlineData("Smoke is coming off the left rear wheel", "brake-drag")]
    [InlineData("Big lump on the side of my tyre after I clouted a pothole", "wheel-hit", "tyre-blowout")]
    [InlineData("The whole car shakes and the engine light is flashing", "engine-lamp", "vibration")]
    [InlineData("One corner of the car sits lower than the others and something went bang", "corner-dropped-with-bang")]
    [InlineData("The gauge climbs into the red when I sit in traffic but goes down on the open road", "overheats-standing", "temperature-lamp")]
    [InlineData("There is a puddle of green coolant under the front of the car", "coolant-loss")]
    [InlineData("A hum that gets louder with speed", "whine")]
    [InlineData("No smoke from the exhaust, but it burns a lot of oil", "blue-smoke", "exhaust-smoke")]
    [InlineData("Rear window defroster does nothing", "rear-window-shatters", "glass-shatters")]
    public void Questions_WhatWasSaid_IsNotAsked(string complaint, params string[] said)
    {
        var asked = Asked(complaint);

        Assert.NotEmpty(asked);
        Assert.DoesNotContain(asked, question => said.Contains(question.Symptom));
    }

    [Theory]
    [InlineData("There is a squeal from the front wheels when I brake lightly", "brake-squeal", "squeal from the front wheels when I brake lightly")]
    [InlineData("Clutch smells burnt and the engine revs up but the car hardly goes faster", "clutch-slip", "engine revs up but the car hardly goes faster")]
    public void Questions_WhatWasSaidPerhaps_QuotesTheWords(string complaint, string symptom, string words)
    {
        var question = Assert.Single(Asked(complaint), question => question.Symptom == symptom);

        Assert.Contains(words, question.About, StringComparison.Ordinal);
        Assert.Contains($"“{question.About}”", question.Ask, StringComparison.Ordinal);
        Assert.EndsWith(RepositoryRules.Book.Catalogue.Symptoms[symptom].Ask, question.Ask, StringComparison.Ordinal);
    }

    [Fact]
    public void Questions_WhatWasNotSpokenOf_QuotesNothing()
    {
        var question = Asked("The brake pedal feels soft")[0];

        Assert.Null(question.About);
        Assert.Equal(RepositoryRules.Book.Catalogue.Symptoms[question.Symptom].Ask, question.Ask);
    }

    /// <summary>So it is for what is given as data.</summary>
    [Fact]
    public void Questions_AnsweredByAnySymptom_AreNotAsked()
    {
        var answers = RepositoryRules.Book.Catalogue.Symptoms.Values.SelectMany(symptom => symptom.AnsweredBy.Select(by => new AnsweredOn(by, [])).Concat(symptom.AnsweredOn), (symptom, by) => (symptom.Id, By: by)).ToList();

        Assert.NotEmpty(answers);
        Assert.All(answers, answer =>
        {
            var given = new SymptomReport { Symptom = answer.By.Symptom, Occasions = [.. answer.By.Occasions.Take(1)] };
            Assert.DoesNotContain(Advice.To(new AdviceRequest { Vehicle = new VehicleDescription(), Symptoms = [given] }).Questions, question => question.Symptom == answer.Id);
        });
    }

    private static IReadOnlyList<QuestionDocument> Asked(string complaint) =>
        [.. Advice.To(new AdviceRequest { Vehicle = new VehicleDescription(), Complaint = complaint }).Questions];
}
