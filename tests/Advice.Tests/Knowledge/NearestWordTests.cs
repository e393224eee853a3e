using Advice.Knowledge.Words;
using CsCheck;

namespace Advice.Tests.Knowledge;

public class NearestWordTests
{
    private static readonly string[] Known =
    [
        "brake-bleed", "brake-fluid", "brake-pad-thickness", "coolant-condition", "cooling-fan", "fuel", "tyre-pressure", "tyre-tread-depth", "tread-look", "zzz",
    ];

    private static readonly Gen<string> Words = Gen.Char["abct-"].Array[0, 12].Select(letters => new string(letters));

    [Theory]
    [InlineData("feul", "fuel")]
    [InlineData("FUEL", "fuel")]
    [InlineData("tyre-presure", "tyre-pressure")]
    [InlineData("coolant-condtion", "coolant-condition")]
    [InlineData("zz", "zzz")]
    [InlineData("nothing-like-it", null)]
    [InlineData("", null)]
    public void To_Word_IsTheOneThatWasMeant(string word, string? nearest) => Assert.Equal(nearest, NearestWord.To(word, Known));

    [Theory]
    [InlineData("brake-pads", "brake-pad-thickness,brake-bleed,brake-fluid")]
    [InlineData("tire-tread-depth", "tyre-tread-depth,tread-look")]
    [InlineData("brake-fluids", "brake-fluid,brake-bleed,brake-pad-thickness")]
    [InlineData("feul", "fuel")]
    [InlineData("nothing", "")]
    public void Ids_Id_AreThoseThatWereMeant(string id, string nearest) => Assert.Equal(nearest, string.Join(',', NearestWord.Ids(id, Known)));

    [Fact]
    public void Slips_TwoWords_AreAsManyBothWaysAndNoneForTheSame() =>
        Gen.Select(Words, Words).Sample((a, b) =>
        {
            var slips = NearestWord.Slips(a, b);
            Assert.Equal(slips, NearestWord.Slips(b, a));
            Assert.Equal(a == b, slips == 0);
            Assert.InRange(slips, Math.Abs(a.Length - b.Length), Math.Max(a.Length, b.Length));
        });

    [Fact]
    public void Ids_AnyOrderOfTheKnown_AreTheSame() =>
        Gen.Select(Words, Gen.Shuffle(Known)).Sample((id, shuffled) =>
        {
            var near = NearestWord.Ids(id, shuffled);
            Assert.Equal(NearestWord.Ids(id, Known), near);
            Assert.True(near.Count <= 3);
            Assert.Equal(near.Distinct(), near);
        });
}
