using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Advice.Rules.Cases;
using Advice.Rules.Files;
using Advice.Rules.RuleSets;
using AdviceService.Requests;
using AdviceService.Tests.Http;

namespace AdviceService.Tests.Schemas;

/// <summary>The schema of case files says what the reader of cases says, and of requests what the interface says.</summary>
public class CaseFileSchemaTests
{
    private static readonly Lazy<RuleBook> Book = new(() => RuleSetLoader.Load(FileSchema.Folder));

    [Fact]
    public void Given_IsDescribedAsInTheInterface()
    {
        var described = JsonNode.Parse(File.ReadAllText(InterfaceDescription.File).Replace("#/components/schemas/", "#/$defs/", StringComparison.Ordinal))!["components"]!["schemas"]!;
        var own = FileSchema.CaseText["$defs"]!.AsObject().Where(definition => definition.Key is not ("case" or "text" or "texts")).ToList();

        Assert.Contains(own, definition => definition.Key == "AdviceRequest");
        Assert.All(own, definition => Assert.True(JsonNode.DeepEquals(described[definition.Key], definition.Value), definition.Key));
    }

    [Theory]
    [InlineData(true, "id: a, given: {vehicle: {}}, driving: normal")]
    [InlineData(true, "id: a, given: {vehicle: {}}, driving: [normal, soon], never: [brake-pad-thickness], among: {3: brake-pad-thickness}")]
    [InlineData(true, "id: a, given: {vehicle: {}, findings: [{check: tyre-tread-depth, value: 1, unit: mm}]}, judged: {tyre-tread-depth: major}")]
    [InlineData(false, "id: a, given: {vehicle: {}, findings: [{check: tyre-tread-depth, value: 1, unit: mm}]}, judged: {tyre-tread-depth: bad}")]
    [InlineData(false, "id: a, given: {vehicle: {}, findings: [{check: tyre-tread-depth, value: 1, unit: mm}]}, judged: {tyre-tread-depth: [major, minor]}")]
    [InlineData(false, "id: a, given: {vehicle: {}}, judged: {}")]
    [InlineData(false, "id: a, given: {vehicle: {}}")]
    [InlineData(false, "id: a, driving: normal")]
    [InlineData(false, "given: {vehicle: {}}, driving: normal")]
    [InlineData(false, "id: a, given: {}, driving: normal")]
    [InlineData(false, "id: a, given: {vehicle: {fuel: 3}}, driving: normal")]
    [InlineData(false, "id: a, given: {vehicle: {}, wish: soon}, driving: normal")]
    [InlineData(false, "id: a, given: {vehicle: {}}, driving: fast")]
    [InlineData(false, "id: a, given: {vehicle: {}}, driving: [normal, soon, workshopOnly, stop, unknown]")]
    [InlineData(false, "id: a, given: {vehicle: {}}, driving: normal, wish: soon")]
    [InlineData(false, "id: a, given: {vehicle: {}}, first: []")]
    [InlineData(false, "id: a, given: {vehicle: {}}, among: {0: brake-pad-thickness}")]
    [InlineData(false, "id: a, given: {vehicle: {}}, among: {51: brake-pad-thickness}")]
    [InlineData(false, "id: a, given: {vehicle: {}}, among: [brake-pad-thickness]")]
    public void Case_IsTakenByBothOrByNeither(bool right, string @case)
    {
        var text = $"cases:\n  - {{{@case}}}\n";
        var file = new RuleFile("own.cases.yaml", Encoding.UTF8.GetBytes(text));
        var reader = new RequestReader(Book.Value.Catalogue);

        Assert.Equal(right, FileSchema.Takes(FileSchema.Cases, YamlJson.Read(text)));
        Assert.Equal(right, CaseFolder.Read([file], Book.Value.Catalogue, Read).Errors.Count == 0);

        GivenRequest Read(JsonElement given, DateOnly today)
        {
            var read = reader.Read(given, today);
            return new GivenRequest(read.Value, [.. read.Errors.Select(error => (error.Pointer, error.Detail))]);
        }
    }
}
