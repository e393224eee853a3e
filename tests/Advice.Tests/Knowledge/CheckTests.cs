using Advice.Knowledge.Checks;
using Advice.Knowledge.Words;

namespace Advice.Tests.Knowledge;

public class CheckTests
{
    [Theory]
    [InlineData("one", 0.7)]
    [InlineData("shared", 0.8)]
    [InlineData("beyond", 1)]
    [InlineData("other", 0)]
    public void Surely_ValuesOfOneScale_AddUpToOneAtMost(string fault, double surely) => Assert.Equal(surely, Worn.Surely(fault), 12);

    private static readonly Check Worn = new(
        "look", new Text("Look", "Look"), "brakes", new Area("around", "around", 0), [], 5, DoneBy.Owner, [], [], ["Look."], null,
        [new("sound", true, "sound"), new("worn", false, "worn"), new("torn", false, "torn")],
        [
            new("one", 0.7, "worn"), new("shared", 0.3, "worn"), new("shared", 0.5, "torn"),
            new("beyond", 0.7, "worn"), new("beyond", 0.6, "torn"),
        ],
        0.05, [], false);
}
