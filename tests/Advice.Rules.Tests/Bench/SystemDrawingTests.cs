using System.Xml.Linq;
using Advice.Rules.Bench;

namespace Advice.Rules.Tests.Bench;

public class SystemDrawingTests
{
    private static readonly Knowledge.Catalogue Catalogue = RepositoryRules.Book.Catalogue;

    [Fact]
    public void Of_EverySystem_DrawsEachFaultOnceAndNothingOverAnother() => Assert.All(Catalogue.Systems, system =>
    {
        var drawing = XElement.Parse(string.Join('\n', new SystemDrawing(Catalogue).Of(system.Id)));
        var boxes = drawing.Descendants().Where(one => one.Name.LocalName == "rect" && one.Attribute("x") is not null).ToList();
        var titles = drawing.Descendants().Where(one => one.Name.LocalName == "title").Select(title => title.Value).ToList();

        Assert.All(Catalogue.Faults.Values.Where(fault => fault.System == system.Id), fault => Assert.Single(titles, title => title.StartsWith($"{fault.Id}, base rate", StringComparison.Ordinal)));
        foreach (var column in boxes.GroupBy(box => (int)box.Attribute("x")!))
        {
            var tops = column.Select(box => (double)box.Attribute("y")!).Order().ToList();
            Assert.All(tops.Zip(tops.Skip(1)), pair => Assert.True(pair.Second - pair.First >= 17.9));
        }
    });

    [Fact]
    public void Of_SameSystemTwice_IsTheSamePicture() =>
        Assert.Equal(new SystemDrawing(Catalogue).Of("brakes"), new SystemDrawing(Catalogue).Of("brakes"));
}
