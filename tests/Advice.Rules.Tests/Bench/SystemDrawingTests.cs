using System.Globalization;
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

    /// <summary>By the width of a wide sans-serif face, 0.58 of its size for a letter, every label is within its box and every text within the picture.</summary>
    [Fact]
    public void Of_EverySystem_LabelsFitTheirBoxes() => Assert.All(Catalogue.Systems, system =>
    {
        var drawing = XElement.Parse(string.Join('\n', new SystemDrawing(Catalogue).Of(system.Id)));
        var width = double.Parse(drawing.Attribute("viewBox")!.Value.Split(' ')[2], CultureInfo.InvariantCulture);
        foreach (var text in drawing.Descendants().Where(one => one.Name.LocalName == "text" && one.Attribute("text-anchor")!.Value == "start"))
        {
            var wide = text.Value.Length * 0.58 * (double)text.Attribute("font-size")!;
            var box = text.Parent!.Elements().FirstOrDefault(one => one.Name.LocalName == "rect" && one.Attribute("x") is not null && text.Parent.Name.LocalName == "g");
            Assert.True((double)text.Attribute("x")! + wide <= (box is null ? width : (double)box.Attribute("x")! + (double)box.Attribute("width")!), text.Value);
        }
    });

    /// <summary>The legend says what widths, shades and colours mean, and no text is the print of an object.</summary>
    [Fact]
    public void Of_EverySystem_ExplainsItself() => Assert.All(Catalogue.Systems, system =>
    {
        var texts = XElement.Parse(string.Join('\n', new SystemDrawing(Catalogue).Of(system.Id))).Descendants().Where(one => one.Name.LocalName == "text").Select(one => one.Value).ToList();

        Assert.Contains($"what may be wrong: {system.Name.Trade}", texts);
        Assert.Contains(texts, text => text.StartsWith("nearly always: ", StringComparison.Ordinal));
        Assert.Contains("hazard: a danger to people", texts);
        Assert.DoesNotContain(texts, text => text.Contains('{', StringComparison.Ordinal));
    });

    [Fact]
    public void Of_SameSystemTwice_IsTheSamePicture() =>
        Assert.Equal(new SystemDrawing(Catalogue).Of("brakes"), new SystemDrawing(Catalogue).Of("brakes"));
}
