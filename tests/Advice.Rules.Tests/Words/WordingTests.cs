using Advice.Knowledge.Words;
using Advice.Rules.Tests.Overlays;

namespace Advice.Rules.Tests.Words;

/// <summary>Every sentence has its words, and an overlay may change them but not take them away.</summary>
public class WordingTests
{
    private const string Replacing = $"{Laid.Name}replaces:\n  - {{kind: wordings, id: ";

    [Fact]
    public void Wordings_AreThoseOfAllSentences() =>
        Assert.Equal(Sentences.All.Keys.Order(StringComparer.Ordinal), RepositoryRules.Book.Catalogue.Wordings.Keys.Order(StringComparer.Ordinal));

    [Theory]
    [InlineData("first-step", "Begin with {step}.", "Begin with this.")]
    [InlineData("driving-soon", "Soon.", "")]
    public void Overlay_OtherWords_AreSaid(string id, string trade, string plain) => Assert.Equal(
        new Text(trade, plain.Length == 0 ? trade : plain),
        Laid.Over("", [($"{Replacing}{id}}}\n", Words(id, trade, plain))], book => book.Catalogue.Wordings[id].Text));

    [Theory]
    [InlineData("first-step", "Begin with {stop}.", "own.yaml(2,28): error unknown-word: '{stop}' is nothing that 'first-step' can name; it can name {step}")]
    [InlineData("first-step", "Begin with } {step}.", "own.yaml(2,28): error unknown-word: '}' is nothing that 'first-step' can name; it can name {step}")]
    [InlineData("driving-soon", "Drive to {step}.", "own.yaml(2,30): error unknown-word: '{step}' is nothing that 'driving-soon' can name; it names nothing")]
    public void Overlay_WordsThatDoNotFit_AreRefused(string id, string trade, string error) =>
        Assert.Contains(error, Laid.Says($"{Replacing}{id}}}\n", Words(id, trade, "")));

    [Fact]
    public void Rules_WordsOfNoSentence_AreRefused() => Assert.Contains(
        "more.yaml(2,10): error unknown-id: no answer has a sentence 'first-stp'; did you mean 'first-step'?", Laid.Says(Laid.Name, shipped: Words("first-stp", "Begin.", "")));

    [Fact]
    public void Overlay_TakesWordsAway_IsRefused() => Assert.Contains(
        "overlay.yaml(4,26): error still-needed: the wording 'first-step' cannot be switched off: answers need words for it; replace it instead",
        Laid.Says($"{Laid.Name}off:\n  - {{kind: wordings, id: first-step, because: It is plain.}}\n"));

    [Theory]
    [InlineData("driving-stop", true)]
    [InlineData("first-step", false)]
    public void Overlay_OtherWordsForWhatKeepsPeopleFromHarm_AreSaidAtEveryStart(string id, bool said) =>
        Assert.Equal(said, Laid.Says($"{Replacing}{id}}}\n", Words(id, "Drive on.", "")).Any(warning => warning.Contains($"'{id}' under 'wordings' protects people and is replaced", StringComparison.Ordinal)));

    private static string Words(string id, string trade, string plain) =>
        $"wordings:\n  - {{id: {id}, text: \"{trade}\"{(plain.Length == 0 ? "" : $", plain: \"{plain}\"")}}}\n";
}
