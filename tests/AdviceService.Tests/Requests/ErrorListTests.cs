using static AdviceService.Tests.Requests.Reading;

namespace AdviceService.Tests.Requests;

/// <summary>What the list of errors tells the caller, and what it keeps to itself.</summary>
public class ErrorListTests
{
    [Theory]
    [InlineData("\"symptoms\":[{\"symptom\":\"clonk\"}]", "clunk")]
    [InlineData("\"symptoms\":[{\"symptom\":\"clunk\",\"occasions\":[\"breaking\"]}]", "braking")]
    [InlineData("\"findings\":[{\"check\":\"brake-pads\",\"observation\":\"x\"}]", "brake-pad-thickness")]
    [InlineData("\"findings\":[{\"check\":\"tire-tread-depth\",\"observation\":\"x\"}]", "tyre-tread-depth")]
    [InlineData("\"services\":[{\"item\":\"diferential-fluid\"}]", "differential-fluid")]
    [InlineData("\"symptoms\":[{\"symptom\":\"clunk\",\"position\":\"front-lft\"}]", "front-left")]
    [InlineData("\"jurisdiction\":\"us\"", "US")]
    [InlineData("\"workshop\":{\"audience\":\"mechanic\"}", "owner, technician")]
    [InlineData("\"vehicle\":{\"fuel\":\"petrol\"}", "gasoline, diesel")]
    [InlineData("\"vehicle\":{\"Fuel\":\"diesel\"}", "fuel")]
    [InlineData("\"vehicle\":{\"odometer\":{\"value\":1,\"unit\":\"m\"}}", "km, mi")]
    [InlineData("\"vehicle\":{\"odometer\":{\"value\":-1,\"unit\":\"mi\"}}", "0 and 3000000 km")]
    [InlineData("\"findings\":[{\"check\":\"coolant-condition\",\"observation\":\"green\"}]", "clean, rusty, oily, milky")]
    [InlineData("\"findings\":[{\"check\":\"tyre-pressure\",\"value\":2,\"unit\":\"atm\"}]", "bar, hPa, inHg, kPa, psi")]
    [InlineData("\"findings\":[{\"check\":\"tyre-pressure\",\"value\":99,\"unit\":\"bar\"}]", "0 and 900 kPa")]
    [InlineData("\"findings\":[{\"check\":\"coolant-condition\",\"value\":1,\"unit\":\"mm\"}]", "give observation")]
    [InlineData("\"limits\":8", "limit")]
    [InlineData("\"limit\":99", "1 and 50")]
    public void Read_Wrong_SaysWhatWouldBeRight(string members, string offered)
    {
        var body = members.StartsWith("\"vehicle\"", StringComparison.Ordinal) ? $"{{{members}}}" : With(members);

        Assert.Contains(Read(body).Errors, error => error.Detail.Contains(offered, StringComparison.Ordinal));
    }

    [Fact]
    public void Read_UnknownId_OffersThreeAtMost()
    {
        var detail = Assert.Single(Read(With("\"findings\":[{\"check\":\"brake-fluid\",\"observation\":\"x\"}]")).Errors).Detail;

        Assert.Equal(3, detail[(detail.IndexOf(':', StringComparison.Ordinal) + 1)..].Split(',').Length);
    }

    [Theory]
    [InlineData("{\"vehicle\":{},\"complaint\":\"QQQ\\u0000\"}")]
    [InlineData("{\"vehicle\":\"QQQ\",\"jurisdiction\":\"QQQ\",\"asOf\":\"QQQ\",\"limit\":\"QQQ\",\"symptoms\":\"QQQ\",\"workshop\":\"QQQ\"}")]
    [InlineData("{\"vehicle\":{\"fuel\":\"QQQ\",\"modelYear\":\"QQQ\",\"odometer\":{\"value\":\"QQQ\",\"unit\":\"QQQ\"}},\"troubleCodes\":[\"QQQ\"]}")]
    [InlineData("{\"vehicle\":{},\"symptoms\":[{\"symptom\":\"QQQ\",\"occasions\":[\"QQQ\"],\"position\":\"QQQ\",\"present\":\"QQQ\"}],\"services\":[{\"item\":\"QQQ\",\"on\":\"QQQ\"}]}")]
    [InlineData("{\"vehicle\":{},\"findings\":[{\"check\":\"brake-pad-thickness\",\"value\":1,\"unit\":\"QQQ\",\"observation\":\"QQQ\",\"limit\":{\"minimum\":\"QQQ\",\"unit\":\"QQQ\"}}]}")]
    [InlineData("{\"vehicle\":{},\"complaint\":\"QQQ")]
    public void Read_Wrong_RepeatsNothingThatTheCallerWrote(string body)
    {
        var read = Read(body);

        Assert.NotEmpty(read.Errors);
        Assert.All(read.Errors, error => Assert.DoesNotContain("QQQ", error.ToString(), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(99, 99, "unknown-member")]
    [InlineData(100, 100, "unknown-member")]
    [InlineData(101, 100, "more-errors")]
    [InlineData(5_000, 100, "more-errors")]
    public void Read_ManyErrors_ListsAHundredAndSaysSo(int wrong, int listed, string last)
    {
        var members = string.Join(',', Enumerable.Range(0, wrong - 1).Select(i => $"\"x{i}\":0"));
        var read = Read($"{{\"vehicle\":{{\"fuel\":1}},{members}}}");

        Assert.Equal(listed, read.Errors.Count);
        Assert.Equal(("wrong-type", last), (read.Errors[0].Code, read.Errors[^1].Code));
    }

    [Fact]
    public void Read_ShapeErrorBeyondTheList_StillCountsForTheStatus()
    {
        var unknown = string.Join(',', Enumerable.Repeat("{\"symptom\":\"no\"}", 100));

        Assert.Equal(422, Read(With($"\"symptoms\":[{unknown}],\"troubleCodes\":[\"no\"]")).Status);
        Assert.Equal(400, Read(With($"\"symptoms\":[{unknown}],\"troubleCodes\":[7]")).Status);
    }

    [Theory]
    [InlineData("symptoms", "{\"symptom\":\"clunk\"}", 100)]
    [InlineData("unsure", "\"clunk\"", 100)]
    [InlineData("troubleCodes", "\"P0301\"", 50)]
    [InlineData("findings", "{\"check\":\"coolant-condition\",\"observation\":\"rusty\"}", 300)]
    [InlineData("services", "{\"item\":\"differential-fluid\"}", 200)]
    public void Read_List_MayHaveItsLimitAndNoMore(string list, string element, int most)
    {
        Assert.Empty(Read(With(Filled(most))).Errors);
        Assert.Equal([$"/{list} too-many"], Errors(Read(With(Filled(most + 1)))));

        string Filled(int count) => $"\"{list}\":[{string.Join(',', Enumerable.Repeat(element, count))}]";
    }

    [Fact]
    public void Read_LongMemberNames_AreNotSentBack()
    {
        var name = new string('n', 101);
        var read = Read(With($"\"{name}\":1,\"{name}\":2"));

        Assert.Equal([" duplicate-member", " unknown-member"], Errors(read));
        Assert.All(read.Errors, error => Assert.DoesNotContain("nnn", error.ToString(), StringComparison.Ordinal));
    }
}
