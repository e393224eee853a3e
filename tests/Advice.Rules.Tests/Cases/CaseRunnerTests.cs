using Advice.Rules.Cases;

namespace Advice.Rules.Tests.Cases;

public class CaseRunnerTests
{
    [Theory]
    [InlineData("first: [brake-pad-thickness, brake-disc-surface]", true)]
    [InlineData("first: tyre-pressure", false)]
    [InlineData("among: {8: [brake-pad-thickness]}", true)]
    [InlineData("among: {1: [brake-disc-thickness]}", false)]
    [InlineData("among: {8: [brake-pad-thickness, tyre-pressure]}", false)]
    [InlineData("never: [tyre-pressure, tyre-worn-unevenly]", true)]
    [InlineData("never: [brake-pad-thickness]", false)]
    [InlineData("never: [brake-pads-worn]", false)]
    [InlineData("cautions: [brake-dust]", true)]
    [InlineData("cautions: [brake-dust, hot-coolant]", false)]
    [InlineData("noCautions: [hot-coolant]", true)]
    [InlineData("noCautions: [hot-coolant, brake-dust]", false)]
    [InlineData("suspect: [brake-pads-worn, tyre-worn-unevenly]", true)]
    [InlineData("suspect: [tyre-worn-unevenly]", false)]
    [InlineData("driving: [normal, soon, workshopOnly]", true)]
    [InlineData("driving: stop", false)]
    [InlineData("normal: [tailpipe-water-cold]", false)]
    public void Run_Expectation_IsMetOrNot(string expectation, bool passes)
    {
        var set = OneCase.With(expectation);

        Assert.Empty(set.Errors);
        Assert.Equal(passes, Run(set).Passed);
    }

    [Theory]
    [InlineData("{check: brake-pad-thickness, position: front-left, value: 8, unit: mm}", "none", true)]
    [InlineData("{check: brake-pad-thickness, position: front-left, value: 2.5, unit: mm}", "minor", true)]
    [InlineData("{check: brake-pad-thickness, position: front-left, value: 2.5, unit: mm}", "none", false)]
    [InlineData("{check: brake-pad-thickness, value: 8, unit: mm, position: front-left}, {check: brake-pad-thickness, value: 0.5, unit: mm, position: front-right}", "dangerous", true)]
    [InlineData("{check: brake-pad-thickness, value: 8, unit: mm, position: front-left}, {check: brake-pad-thickness, value: 5, unit: mm, position: front-right}", "none", false)]
    public void Run_JudgedFinding_CountsTheWorst(string findings, string judged, bool passes)
    {
        var set = OneCase.Read($"cases:\n  - id: pads\n    given: {{vehicle: {{}}, findings: [{findings}]}}\n    judged: {{brake-pad-thickness: {judged}}}\n");

        var result = Run(set);
        Assert.Empty(set.Errors);
        Assert.True(passes == result.Passed, result.ToString());
        Assert.Equal(!passes, result.ToString().Contains($"expected judged: brake-pad-thickness {judged}", StringComparison.Ordinal));
    }

    [Fact]
    public void Run_NormalReport_MeetsNormal()
    {
        var set = OneCase.Read(
            "cases:\n  - id: water\n    given: {vehicle: {}, symptoms: [{symptom: water-from-tailpipe, occasions: [cold-start]}]}\n    normal: [tailpipe-water-cold]\n");

        Assert.True(Run(set).Passed);
    }

    [Fact]
    public void ToString_FailedCase_ShowsExpectedAndActualWithReasons()
    {
        var text = Run(OneCase.With("suspect: tyre-worn-unevenly")).ToString();

        Assert.StartsWith("brakes/own.cases.yaml(2,5): squeal fails\n  understood: squeal @braking\n  expected suspect: tyre-worn-unevenly\n  actual   ", text, StringComparison.Ordinal);
        Assert.Contains("[brake-pads-worn-squeal", text, StringComparison.Ordinal);
        Assert.DoesNotContain("driving", text, StringComparison.Ordinal);
    }

    private static CaseResult Run(CaseSet set) => new CaseRunner(RepositoryRules.Book).Run(Assert.Single(set.Cases));
}
