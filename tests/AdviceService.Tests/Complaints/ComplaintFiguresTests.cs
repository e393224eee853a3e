namespace AdviceService.Tests.Complaints;

/// <summary>The figures themselves, on made-up complaints.</summary>
public class ComplaintFiguresTests
{
    [Fact]
    public void Confusion_CountsWhatIsNamedFirst()
    {
        var confusion = new ComplaintConfusion();
        confusion.Add("brakes", "brakes");
        confusion.Add("brakes", "steering");
        confusion.Add("steering", null);

        Assert.Equal(
            [
                "Filed under (down), named first (across); others than the filed one may be accepted too:",
                "                (none)  brakes steerin",
                "brakes               .     [1]       1",
                "steering             1       .     [0]",
            ],
            confusion.Lines());
    }

    [Theory]
    [InlineData(400, 320, 0.76, 0.84)] // normal approximation: 0.8 ± 1.96 · √(0.8 · 0.2 / 400)
    [InlineData(100, 100, 1, 1)]
    public void Interval_IsThatOfTheBinomial(int lines, int holding, double low, double high)
    {
        var interval = Resampling.Interval([.. Enumerable.Range(0, lines).Select(i => i < holding)]);

        Assert.InRange(interval.Low, low - 0.01, low + 0.01);
        Assert.InRange(interval.High, high - 0.01, high + 0.01);
        Assert.Equal(interval, Resampling.Interval([.. Enumerable.Range(0, lines).Select(i => i < holding)]));
    }
}
