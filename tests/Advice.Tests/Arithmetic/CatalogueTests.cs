using System.Text.RegularExpressions;
using Advice.Arithmetic;

namespace Advice.Tests.Arithmetic;

/// <summary>Laws of every computation's description.</summary>
public class CatalogueTests
{
    public static TheoryData<string> Names { get; } = new(Computations.All.Select(computation => computation.Name));

    [Theory]
    [MemberData(nameof(Names))]
    public void Description_IsWhole(string name)
    {
        var computation = Computed.Named(name);

        Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", name);
        Assert.NotEmpty(computation.Formula);
        Assert.NotEmpty(computation.Sources);
        Assert.Equal(computation.Inputs.Count, computation.Inputs.Select(input => input.Name).Distinct().Count());
        foreach (var number in computation.Inputs.OfType<NumberInput>())
            Assert.True(number.Least < number.Most, number.Name);
        foreach (var unit in computation.Inputs.OfType<NumberInput>().Select(number => number.Unit).OfType<string>())
            Assert.Contains(unit, Advice.Findings.UnitConversion.Accepted(unit));
        foreach (var text in computation.Inputs.OfType<TextInput>())
            Assert.Matches(new Regex(text.Form.ToString(), text.Form.Options), text.Example);
    }
}
