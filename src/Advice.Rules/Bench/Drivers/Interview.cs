using Advice.Symptoms;

namespace Advice.Rules.Bench.Drivers;

/// <summary>Asks one driver after another until the fault is among the first three suspects.</summary>
public sealed class Interview(Assessment assessment, int mostQuestions)
{
    private const int Front = 3;

    /// <summary>After how many questions the fault is among the first three suspects; null = not within the most.</summary>
    public int? Of(Driver driver, IAskingOrder order)
    {
        ArgumentNullException.ThrowIfNull(driver);
        ArgumentNullException.ThrowIfNull(order);
        var (advised, asked) = (assessment.Of(driver.Case), new HashSet<string>());
        for (var questions = 0; ; questions++)
        {
            if (IsInFront(advised, driver.Fault))
                return questions;
            if (questions == mostQuestions || order.Next(advised, asked) is not { } symptom)
                return null;
            asked.Add(symptom);
            if (!driver.Unsure.Contains(symptom))
                advised = assessment.Of(advised.Case with { Reports = [.. advised.Case.Reports, new Report(symptom, [], null, driver.Noticed.Contains(symptom))] });
        }
    }

    private static bool IsInFront(Advised advised, string fault) =>
        advised.Suspicion.Raised.Select(suspect => suspect.Instance.Fault.Id).Distinct().Take(Front).Contains(fault);
}
