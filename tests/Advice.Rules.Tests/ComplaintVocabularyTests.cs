using Advice.Rules.Cases;
using Advice.Symptoms;

namespace Advice.Rules.Tests;

/// <summary>Reads with the vocabulary of the repository.</summary>
public class ComplaintVocabularyTests
{
    private static readonly ComplaintReader Reader = new(RepositoryRules.Book.Catalogue);

    [Theory]
    [InlineData("steering wheel shakes when braking from highway speeds", "steering-shake@braking-from-speed")]
    [InlineData("Big clunk from underneath when I shift from reverse into drive", "direction-change-clunk@selecting-gear")]
    [InlineData("engine turns over but won't start", "cranks-no-start@")]
    [InlineData("12v battery", "battery-flat@")]
    [InlineData("wipers failed", "wipers-fail@")]
    [InlineData("the fuse keeps blowing", "fuse-blows@")]
    [InlineData("sunroof is stuck", "sunroof-fails@")]
    [InlineData("condensation in the headlight", "lamp-moisture@")]
    [InlineData("check engine lite is blinking", "engine-lamp-flashing@")]
    [InlineData("handbrake doesn't hold", "parking-brake-weak@")]
    [InlineData("it squeals when I brake", "brake-squeal@braking")]
    [InlineData("battery light on, dim lights", "battery-lamp@ dim-lights@")]
    [InlineData("the stearing is loose", "loose-steering@")]
    [InlineData("a low growl from forty up", "humming@")]
    [InlineData("My steering wheel shakes at 110 but only when I brake", "steering-shake@braking+high-speed")]
    public void Read_OwnersWords_Symptoms(string complaint, string expected)
    {
        var reports = Reader.Read(complaint).Reports.Where(r => r.Present).Select(r => $"{r.Symptom}@{string.Join('+', r.Occasions)}");

        Assert.Equal(expected, string.Join(' ', reports));
    }

    [Fact]
    public void Misread_RepositoryRules_NoPhrase() =>
        Assert.Empty(new PhraseRunner(RepositoryRules.Book.Catalogue).Misread());
}
