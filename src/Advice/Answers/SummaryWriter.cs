using Advice.Knowledge;

namespace Advice.Answers;

/// <summary>The answer in a few plain sentences.</summary>
internal static class SummaryWriter
{
    /// <summary>Whether to drive, what to look at first, and what was left out.</summary>
    public static string Write(Advised advised, DrivingAdvice driving, bool textLeft) =>
        string.Join(' ', Sentences(advised, driving, textLeft));

    private static IEnumerable<string> Sentences(Advised advised, DrivingAdvice driving, bool textLeft)
    {
        var (workshop, audience) = (advised.Case.Workshop, advised.Case.Workshop.Reader);
        if (advised.Steps is [var best, ..])
        {
            yield return Driving(driving);
            var first = advised.Steps.FirstOrDefault(step => workshop.CanDo(step.Check));
            yield return $"First step: {(first ?? best).Check.Title.For(audience)}.";
            if (first is null)
                yield return "None of the steps can be done here: they need a technician, a lift or more time.";
            yield break;
        }

        if (driving > DrivingAdvice.Normal)
            yield return Driving(driving);
        yield return advised.Suspicion.Raised.Count > 0 ? "Something is suspected, but no further check is known that would find it."
            : advised.Evidence.Normals.Count > 0 ? "What is noticed is normal; there is nothing to inspect because of it."
            : textLeft && advised.Case.Reports.Count == 0 ? "Nothing in the complaint was recognised, so there is nothing to advise yet. Say what you see, hear, feel or smell, and when."
            : "Nothing points to a fault, so there is nothing to inspect because of it.";
    }

    private static string Driving(DrivingAdvice driving) => driving switch
    {
        DrivingAdvice.Stop => "Do not drive it.",
        DrivingAdvice.WorkshopOnly => "Drive it only gently and straight to a workshop.",
        DrivingAdvice.Soon => "It may be driven, but have it seen to within days.",
        _ => "It may be driven as usual until it is looked at.",
    };
}
