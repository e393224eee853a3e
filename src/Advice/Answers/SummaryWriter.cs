using Advice.Intake;
using Advice.Knowledge;
using Advice.Knowledge.Words;

namespace Advice.Answers;

/// <summary>The answer in a few plain sentences.</summary>
internal sealed class SummaryWriter(Catalogue catalogue)
{
    /// <summary>Whether to drive, what to look at first, and what was left out.</summary>
    /// <param name="reading">How the request was read.</param>
    /// <param name="advised">What was concluded.</param>
    /// <param name="driving">Whether it may be driven.</param>
    /// <param name="asks">Whether a question follows.</param>
    public string Write(CaseReading reading, Advised advised, DrivingAdvice driving, bool asks) => string.Join(' ', Lines(reading, advised, driving, asks));

    private IEnumerable<string> Lines(CaseReading reading, Advised advised, DrivingAdvice driving, bool asks)
    {
        var (workshop, audience) = (advised.Case.Workshop, advised.Case.Workshop.Reader);
        if (driving != DrivingAdvice.Normal || advised.Steps.Count > 0)
            yield return catalogue.Say(audience, Driving(driving));
        if (driving == DrivingAdvice.Normal && advised.Steps.Count > 0 && NormalWriter.OfAll(advised) is { } explanation)
            yield return catalogue.Say(audience, Sentences.OftenNormal, explanation.Because.For(audience));
        if (advised.Steps is [var best, ..])
        {
            var first = advised.Steps.FirstOrDefault(step => workshop.CanDo(step.Check));
            yield return catalogue.Say(audience, Sentences.FirstStep, (first ?? best).Check.Title.For(audience));
            if (first is null)
                yield return catalogue.Say(audience, Sentences.NoStepHere);
            yield break;
        }

        yield return catalogue.Say(
            audience,
            advised.Suspicion.Raised.Count > 0 ? Sentences.NoCheckFindsIt
            : advised.Evidence.Normals.Count > 0 && driving < DrivingAdvice.WorkshopOnly ? Sentences.IsNormal
            : reading.TellsNothing && reading.Case.Reports.Count > 0 && asks ? Sentences.SomethingElse
            : reading.TellsNothing && reading.Complaint.Unread.Count > 0 ? Sentences.NothingRecognised
            : Sentences.NothingPointsToAFault);
    }

    private static Sentence Driving(DrivingAdvice driving) => driving switch
    {
        DrivingAdvice.Stop => Sentences.DrivingStop,
        DrivingAdvice.WorkshopOnly => Sentences.DrivingWorkshopOnly,
        DrivingAdvice.Soon => Sentences.DrivingSoon,
        DrivingAdvice.Unknown => Sentences.DrivingUnknown,
        _ => Sentences.DrivingNormal,
    };
}
