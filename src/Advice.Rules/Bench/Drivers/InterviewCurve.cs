namespace Advice.Rules.Bench.Drivers;

/// <summary>How soon an asking order brings the fault among the first three suspects.</summary>
/// <param name="Order">Name of the order.</param>
/// <param name="Shares">Share of the drivers after 0, 1, 2 … questions.</param>
/// <param name="MeanQuestions">Mean number of questions, where a driver whose fault did not come up counts with the most.</param>
public sealed record InterviewCurve(string Order, IReadOnlyList<double> Shares, double MeanQuestions)
{
    /// <summary>The curve over these drivers.</summary>
    public static InterviewCurve Over(IReadOnlyList<Driver> drivers, IAskingOrder order, Assessment assessment, int mostQuestions)
    {
        ArgumentNullException.ThrowIfNull(drivers);
        ArgumentNullException.ThrowIfNull(order);
        var interview = new Interview(assessment, mostQuestions);
        var needed = drivers.AsParallel().AsOrdered().Select(driver => interview.Of(driver, order)).ToList();
        return new InterviewCurve(
            order.Name,
            [.. Enumerable.Range(0, mostQuestions + 1).Select(questions => needed.Count(one => one <= questions) / (double)drivers.Count)],
            needed.Average(one => one ?? mostQuestions));
    }
}
