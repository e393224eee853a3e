using System.Text.Json;
using static AdviceService.Tests.Requests.Reading;

namespace AdviceService.Tests.Requests;

/// <summary>Lines of a batch: a request with an id beside its members.</summary>
public class LineTests
{
    [Theory]
    [InlineData("""{"id":"a-1","vehicle":{}}""", "\"a-1\"")]
    [InlineData("""{"id":"","vehicle":{}}""", "\"\"")]
    [InlineData("""{"id":7,"vehicle":{}}""", "7")]
    [InlineData("""{"id":-9223372036854775808,"vehicle":{}}""", "-9223372036854775808")]
    [InlineData("""{"id":7,"vehicle":{"modelYear":1}}""", "7")]
    [InlineData("""{"vehicle":{}}""", null)]
    [InlineData("not JSON", null)]
    [InlineData("""{"id":"a-1","vehicle":{"modelYear":2""", "\"a-1\"")]
    [InlineData("""{"asOf":"2026-03-01","id":7,"vehicle":[[[[[[[[[[[[[[[[[[[[""", "7")]
    [InlineData("""{"vehicle":{"id":3""", null)]
    [InlineData("""{"id":{"id":3},"vehicle":""", null)]
    [InlineData("""{"id":"a""", null)]
    public void ReadLine_Id_ComesBackAsItWasGiven(string line, string? id) => Assert.Equal(id, Reader.ReadLine(Bytes(line), Today).Id?.GetRawText());

    [Theory]
    [InlineData("{}", "wrong-type")]
    [InlineData("null", "wrong-type")]
    [InlineData("1.5", "wrong-type")]
    [InlineData("9223372036854775808", "wrong-type")]
    [InlineData("\"a\\u0000\"", "null-character")]
    [InlineData("\"12345678901234567890123456789012345678901234567890123456789012345678901234567890123456789012345678901\"", "too-long")]
    public void ReadLine_WrongId_IsAnErrorAndNotGivenBack(string id, string code)
    {
        var line = Reader.ReadLine(Bytes($"{{\"id\":{id},\"vehicle\":{{}}}}"), Today);

        Assert.Null(line.Id);
        Assert.Equal([$"/id {code}"], Errors(line.Request));
    }

    [Fact]
    public void Read_Id_IsUnknownOutsideABatch() => Assert.Equal(["/id unknown-member"], Errors(Read("""{"id":7,"vehicle":{}}""")));

    [Theory]
    [InlineData("""{"id":7,"vehicle":{}}""")]
    [InlineData("""{"id":[],"vehicle":{"fuel":"petrol"}}""")]
    [InlineData("""{"id":"\ud800","vehicle":{}}""")]
    [InlineData("[]")]
    public void ReadLine_ParsedElsewhere_IsReadTheSame(string line)
    {
        using var document = JsonDocument.Parse(line);
        var (parsed, bytes) = (Reader.ReadLine(document.RootElement, Today), Reader.ReadLine(Bytes(line), Today));

        Assert.Equal(bytes.Id?.GetRawText(), parsed.Id?.GetRawText());
        Assert.Equal(bytes.Request.Errors, parsed.Request.Errors);
    }

    [Fact]
    public void Read_NothingParsed_IsAnEmptyBody() => Assert.Equal([" empty-body"], Errors(Reader.Read(default(JsonElement), Today)));
}
