using System.Globalization;
using System.Text.Json;
using Advice.Arithmetic;
using Advice.Findings;
using AdviceService.Requests;
using CsCheck;
using Outcome = Advice.Arithmetic.Outcome;

namespace AdviceService.Tests.Http;

/// <summary>Giving a value in another unit changes no verdict and no result.</summary>
public class ArithmeticUnitTests
{
    private static readonly (Computation Computation, NumberInput Input)[] Measured =
    [
        .. Computations.All.SelectMany(computation => computation.Inputs.OfType<NumberInput>()
            .Where(input => input.Unit is { } unit && UnitConversion.Accepted(unit).Count > 1
                && computation.Inputs.All(other => other == input || other.Optional || other is WordInput or DayInput))
            .Select(input => (computation, input))),
    ];

    [Fact]
    public void Compute_InAnotherUnit_IsTheSame()
    {
        var compared = 0;
        Gen.Select(Gen.Int[0, Measured.Length - 1], Gen.Int[0, 1000], Gen.Int[0, 20]).Sample((which, share, unit) =>
        {
            var (computation, input) = Measured[which];
            var units = UnitConversion.Accepted(input.Unit!);
            var other = units[unit % units.Count];
            // A hundredth of the range: where limits lie, values often fall on them exactly.
            var value = Math.Round(input.Least + (share * (input.Most - input.Least) / 1000), 2);
            var (own, converted) = (Computed(computation, input, value, input.Unit!), Computed(computation, input, UnitConversion.Convert(value, input.Unit!, other)!.Value, other));
            if (own is null || converted is null)
                return;
            Assert.Equal(own.Verdict, converted.Verdict);
            Assert.Equal(own.Results, converted.Results);
            Interlocked.Increment(ref compared);
        });
        Assert.True(compared > 50, $"only {compared} were compared");
    }

    /// <summary>A limit itself, in both units: 205 °C is 401 °F, 13.8 V is 13,800 mV.</summary>
    [Theory]
    [InlineData("brake-fluid", "boilingPoint", 401, "degF", "as-new", "\"class\":\"DOT 3\"")]
    [InlineData("brake-fluid", "boilingPoint", 284, "degF", "used", "\"class\":\"DOT 3\"")]
    [InlineData("brake-fluid", "boilingPoint", 311, "degF", "used", "\"class\":\"DOT 4\"")]
    [InlineData("charging-voltage", "voltage", 13_800, "mV", "usual", null)]
    [InlineData("voltage-drop", "drop", 200, "mV", "good", "\"circuit\":\"ground\"")]
    [InlineData("voltage-drop", "drop", 201, "mV", "high", "\"circuit\":\"ground\"")]
    public void Compute_AtTheLimit_FallsInTheSameClass(string name, string input, double value, string unit, string verdict, string? more)
    {
        var body = $"{{\"{input}\":{{\"value\":{value.ToString(CultureInfo.InvariantCulture)},\"unit\":\"{unit}\"}}{(more is null ? "" : ",")}{more}}}";
        Assert.Equal(verdict, Computed(Computations.All.Single(one => one.Name == name), body)!.Verdict);
    }

    private static Outcome? Computed(Computation computation, NumberInput input, double value, string unit)
    {
        var words = computation.Inputs.OfType<WordInput>().Where(word => !word.Optional).Select(word => $",\"{word.Name}\":\"{word.Words[0]}\"");
        return Computed(computation, $"{{\"{input.Name}\":{{\"value\":{value.ToString("R", CultureInfo.InvariantCulture)},\"unit\":\"{unit}\"}}{string.Concat(words)}}}");
    }

    private static Outcome? Computed(Computation computation, string body) =>
        RequestBody.Read<Given>(JsonDocument.Parse(body).RootElement, new ComputationPart(computation, new DateOnly(2026, 3, 1)).Read).Value is { } given
            ? computation.Compute(given)
            : null;
}
