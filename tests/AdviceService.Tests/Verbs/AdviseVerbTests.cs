using System.Text.Json;

namespace AdviceService.Tests.Verbs;

public class AdviseVerbTests
{
    private const string Request = """{"asOf":"2026-03-01","vehicle":{"fuel":"gasoline"},"complaint":"The brake pedal slowly sinks to the floor."}""";

    [Fact]
    public async Task Advise_ForAPerson_TellsNotToDriveThenCautionsThenSteps()
    {
        var (exitCode, output, _) = await Run.ToEndAsync(Request, "advise", "-");

        Assert.Equal(0, exitCode);
        var (driving, cautions, steps) = (output.IndexOf("Do not drive", StringComparison.Ordinal), output.IndexOf("Take care", StringComparison.Ordinal),
            output.IndexOf("Looks for", StringComparison.Ordinal));
        Assert.InRange(driving, 0, cautions);
        Assert.InRange(cautions, 0, steps);
        Assert.Contains("Because:", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Advise_Json_IsTheDocument()
    {
        var (exitCode, output, _) = await Run.ToEndAsync(Request, "advise", "-", "--json");

        Assert.Equal(0, exitCode);
        Assert.Equal("stop", JsonDocument.Parse(output).RootElement.GetProperty("driving").GetProperty("advice").GetString());
    }

    [Theory]
    [InlineData("""{"vehicle":{"modelYear":1200}}""", "#/vehicle/modelYear")]
    [InlineData("nothing", "JSON")]
    public async Task Advise_BadRequest_NamesTheFieldAndFails(string request, string named)
    {
        var (exitCode, _, error) = await Run.ToEndAsync(request, "advise", "-");

        Assert.Equal(1, exitCode);
        Assert.Contains(named, error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Advise_WrongRuleFile_NamesFileLineAndColumn()
    {
        var folder = Directory.CreateTempSubdirectory();
        await File.WriteAllTextAsync(Path.Combine(folder.FullName, "broken.yaml"), "symptoms:\n  - {id: squeal, nmae: a squeal}\n");

        var (exitCode, _, error) = await Run.ToEndAsync(Request, "advise", "-", "--rules", folder.FullName);

        Assert.Equal(1, exitCode);
        Assert.Contains("broken.yaml(2,", error, StringComparison.Ordinal);
        Assert.Contains("'name'", error, StringComparison.Ordinal);
        folder.Delete(recursive: true);
    }
}
