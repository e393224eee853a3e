using System.Text.Json;
using System.Text.Json.Nodes;
using Advice.Intake;
using Advice.Symptoms;
using AdviceService.Requests;
using CsCheck;
using static AdviceService.Tests.Requests.Reading;

namespace AdviceService.Tests.Requests;

/// <summary>Laws that hold for any bytes whatever.</summary>
public class AnyBodyTests
{
    private static readonly CaseReader Cases = new(Book.Catalogue, new ComplaintReader(
        Book.Catalogue.Symptoms.Values, Book.Catalogue.Occasions.Values, Book.Catalogue.Positions.Values));

    // Codes of errors whose place is not in the body: nothing is there, or the text is no JSON.
    private static readonly string[] Placeless =
    [
        ErrorCode.EmptyBody, ErrorCode.InvalidText, ErrorCode.MalformedJson, ErrorCode.TooDeep, ErrorCode.MissingMember, ErrorCode.MoreErrors,
    ];

    private static readonly Gen<string> Value = AnyJson.OfDepth(2, repeats: false);

    [Fact]
    public void Read_AnyBytes_IsAValueOrErrors() => Gen.Byte.Array[0, 200].Sample(bytes => { IsAccepted(bytes); }, iter: 20_000);

    [Fact]
    public void Read_AnyJson_IsAValueOrErrors() => AnyJson.OfDepth(5, repeats: true).Sample(body => { IsAccepted(Bytes(body)); }, iter: 20_000);

    [Fact]
    public void Read_GoodRequestWithBytesChanged_IsAValueOrErrors() =>
        Gen.Select(Gen.Int[0, Full.Length - 1], Gen.Byte, Gen.Int[0, 2]).List[1, 4].Sample(
            changes =>
            {
                var bytes = Bytes(Full).ToList();
                foreach (var (at, value, kind) in changes.Where(change => change.Item1 < bytes.Count))
                {
                    if (kind == 0)
                        bytes[at] = value;
                    else if (kind == 1)
                        bytes.RemoveAt(at);
                    else
                        bytes.Insert(at, value);
                }

                IsAccepted([.. bytes]);
            },
            iter: 10_000);

    [Fact]
    public void Read_GoodRequestWithValuesChanged_IsAValueOrErrors()
    {
        var (accepted, refused) = (0, 0);
        Gen.Select(Gen.Int[0, 1000], Value, Gen.Bool).List[1, 3].Sample(
            changes =>
            {
                var body = JsonNode.Parse(Full)!;
                foreach (var (which, json, drops) in changes)
                {
                    if (drops)
                        ChangedJson.Drop(body, which);
                    else
                        ChangedJson.Replace(body, which, json);
                }

                _ = IsAccepted(Bytes(body.ToJsonString())) ? Interlocked.Increment(ref accepted) : Interlocked.Increment(ref refused);
            },
            iter: 2_000);
        Assert.True(accepted > 100 && refused > 100, $"{accepted} accepted, {refused} refused: the generator makes one kind only.");
    }

    [Fact]
    public void Read_MembersInAnyOrder_IsTheSame() =>
        Gen.Select(Gen.Int[0, 1000], Value, Gen.Shuffle(Enumerable.Range(0, JsonNode.Parse(Full)!.AsObject().Count).ToArray())).Sample(
            (which, json, order) =>
            {
                var body = JsonNode.Parse(Full)!;
                ChangedJson.Replace(body, which, json);
                var members = body.AsObject().Select(member => $"\"{member.Key}\":{member.Value?.ToJsonString() ?? "null"}").ToArray();
                var (first, second) = (Read($"{{{string.Join(',', members)}}}"), Read($"{{{string.Join(',', order.Select(i => members[i]))}}}"));
                Assert.Equal(first.Errors, second.Errors);
                Assert.Equal(JsonSerializer.Serialize(first.Value), JsonSerializer.Serialize(second.Value));
            },
            iter: 2_000);

    private static bool IsAccepted(byte[] bytes)
    {
        var read = Reader.Read(bytes, Today);
        Assert.Equal(read.Errors, Reader.Read(bytes, Today).Errors);
        Assert.Equal(read.Value is null, read.Errors.Count > 0);
        Assert.Equal(read.Errors.Count == 0, read.Status == 200);
        Assert.True(read.Status is 200 or 400 or 422);
        Assert.True(read.Errors.Count <= 100);
        Assert.All(read.Errors.Where(error => !Placeless.Contains(error.Code)), error => Assert.True(Leads(error.Pointer, bytes), error.ToString()));
        if (read.Value is { } request)
            Cases.Read(request, Today);
        return read.Value is not null;
    }

    private static bool Leads(string pointer, byte[] bytes)
    {
        using var document = JsonDocument.Parse(bytes);
        var at = document.RootElement;
        foreach (var token in pointer.Split('/').Skip(1))
        {
            var name = token.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal);
            // Where a member stands twice the first one is read.
            if (at.ValueKind == JsonValueKind.Object && at.EnumerateObject().Where(member => member.Name == name).Select(member => member.Value).ToList() is [var first, ..])
                at = first;
            else if (at.ValueKind == JsonValueKind.Array && int.TryParse(name, out var index) && index < at.GetArrayLength())
                at = at[index];
            else
                return false;
        }

        return true;
    }
}
