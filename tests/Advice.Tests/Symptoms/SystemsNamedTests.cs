using Advice.Symptoms.Mentions;
using CsCheck;

namespace Advice.Tests.Symptoms;

/// <summary>Words that name systems only shift suspicion between systems.</summary>
public class SystemsNamedTests
{
    private static readonly string[] Systems = ["brakes", "tyres", "fuel"];

    private static readonly Gen<SystemMention> Mention = Gen.Select(
        Gen.Int[0, 2], Gen.Bool, (system, hint) => new SystemMention(Systems[system], "", 0, 0, hint ? 0.35 : 1));

    [Fact]
    public void Factor_AnyMentions_RaisesNothingAndLeavesTheForemostAlone() => Mention.List[0, 20].Sample(mentions =>
    {
        var named = SystemsNamed.Of(mentions);
        Assert.All(["brakes", "tyres", "fuel", "belts"], system => Assert.InRange(named.Factor(system), 1e-3, 1));
        Assert.All(named.Foremost.Take(1), system => Assert.Equal(1, named.Factor(system)));
    });

    [Fact]
    public void Factor_OneMentionMore_LowersNotItsOwnSystem() => Gen.Select(Mention.List[0, 20], Mention).Sample((mentions, more) =>
        Assert.True(SystemsNamed.Of([.. mentions, more]).Factor(more.System) >= SystemsNamed.Of(mentions).Factor(more.System) - 1e-12));

    [Fact]
    public void Factor_NothingNamed_IsOne() => Assert.Equal(1, SystemsNamed.None.Factor("brakes"));
}
