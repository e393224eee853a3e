using System.Text;
using static AdviceService.Tests.Requests.Reading;

namespace AdviceService.Tests.Requests;

/// <summary>Bodies that are no JSON: one error for the whole body, with the place in the text.</summary>
public class SyntaxTests
{
    /// <summary>A body in Latin-1, so that any byte can be written; the code; what the detail says of the place.</summary>
    public static TheoryData<string, string, string> Broken => new()
    {
        { "{", "malformed-json", "line 1, byte 2" },
        { "{\n  \"vehicle\": {},\n}", "malformed-json", "line 3, byte 1" },
        { "{'vehicle':{}}", "malformed-json", "line 1, byte 2" },
        { "{vehicle:{}}", "malformed-json", "line 1, byte 2" },
        { "{\"vehicle\":{}}{}", "malformed-json", "line 1, byte 15" },
        { "{\"vehicle\":{}}\n// done", "malformed-json", "line 2, byte 1" },
        { "{\"vehicle\":{},\"limit\":08}", "malformed-json", "line 1, byte 24" },
        { "{\"vehicle\":{},\"limit\":+8}", "malformed-json", "line 1, byte 23" },
        { "{\"vehicle\":{},\"limit\":NaN}", "malformed-json", "line 1, byte 23" },
        { "{\"vehicle\":{},\"limit\":.5}", "malformed-json", "line 1, byte 23" },
        { "{\"vehicle\":{},\"limit\":Infinity}", "malformed-json", "line 1, byte 23" },
        { "{\"vehicle\":{},\"complaint\":\"a\nb\"}", "malformed-json", "line 1, byte 29" },
        { "{\"vehicle\":{},\"complaint\":\"\\x\"}", "malformed-json", "line 1, byte 29" },
        { "{\"vehicle\":{},\"complaint\":\"\\u12\"}", "malformed-json", "line 1, byte 32" },
        { "{\"vehicle\":{},\"complaint\":\"abc", "malformed-json", "line 1, byte 31" },
        { "\u00EF\u00BB\u00BF{\"vehicle\":{}}", "malformed-json", "line 1, byte 1" },
        { "{\"vehicle\":{},\n\"complaint\":\"\u00FF\"}", "invalid-text", "line 2, byte 14" },
        { "{\"vehicle\":{},\"complaint\":\"\u00C0\u0080\"}", "invalid-text", "line 1, byte 28" },
        { "{\"vehicle\":{},\"complaint\":\"\u00ED\u00A0\u0080\"}", "invalid-text", "line 1, byte 28" },
        { "{\"vehicle\":{},\"\u00E9\":1}", "invalid-text", "line 1, byte 16" },
        { "{\"vehicle\":{},\"complaint\":\"\\uD83D\"}", "invalid-text", "line 1, byte 28" },
        { "{\"vehicle\":{},\"complaint\":\"\\uDE00\"}", "invalid-text", "line 1, byte 28" },
        { "{\"vehicle\":{},\"complaint\":\"\\uD83D\\uD83D\\uDE00\"}", "invalid-text", "line 1, byte 28" },
        { "{\"vehicle\":{},\"complaint\":\"\\uDE00\\uD83D\"}", "invalid-text", "line 1, byte 28" },
        { "{\"vehicle\":{},\"\\ud83d\":1}", "invalid-text", "line 1, byte 16" },
    };

    [Theory]
    [MemberData(nameof(Broken))]
    public void Read_NoJson_OneErrorThatTellsThePlace(string latin1, string code, string place)
    {
        var read = Reader.Read(Encoding.Latin1.GetBytes(latin1), Today);

        var error = Assert.Single(read.Errors);
        Assert.Equal((400, "", code), (read.Status, error.Pointer, error.Code));
        Assert.EndsWith($"see {place}.", error.Detail, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(@"\uD83D\uDE00")]
    [InlineData(@"\\uD83D")]
    [InlineData(@"\\\uD83D\uDE00\\")]
    [InlineData(@"\""\/\b\f\n\r\t")]
    [InlineData("\U0001F600 ä")]
    public void Read_EscapedText_IsNoError(string complaint) => Assert.Empty(Read(With($"\"complaint\":\"{complaint}\"")).Errors);

    [Theory]
    [InlineData(16, "unknown-member")]
    [InlineData(17, "too-deep")]
    [InlineData(100_000, "too-deep")]
    public void Read_Deep_IsRefusedAboveTheLimit(int levels, string code)
    {
        var lists = levels - 1;
        var read = Read(With($"\"x\":{new string('[', lists)}{new string(']', lists)}"));

        Assert.Equal((400, code), (read.Status, Assert.Single(read.Errors).Code));
    }

    [Theory]
    [InlineData(10_000, 200)]
    [InlineData(10_001, 422)]
    public void Read_Complaint_CountsASurrogatePairOnce(int characters, int status) =>
        Assert.Equal(status, Read(With($"\"complaint\":\"{string.Concat(Enumerable.Repeat("😀", characters))}\"")).Status);
}
