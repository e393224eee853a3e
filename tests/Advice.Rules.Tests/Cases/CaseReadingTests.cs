namespace Advice.Rules.Tests.Cases;

public class CaseReadingTests
{
    [Theory]
    [InlineData("first: brake-pad-thicknes", "(4,12): error unknown-id: unknown check 'brake-pad-thicknes'; did you mean 'brake-pad-thickness'?")]
    [InlineData("suspect: [brake-pads-worm]", "(4,15): error unknown-id: unknown fault 'brake-pads-worm'; did you mean 'brake-pads-worn'?")]
    [InlineData("never: [brake-pad-thickness, nonsense-of-sorts]", "(4,34): error unknown-id: unknown check or fault 'nonsense-of-sorts'")]
    [InlineData("cautions: [brake-dusts]", "(4,16): error unknown-id: unknown caution 'brake-dusts'; did you mean 'brake-dust'?")]
    [InlineData("normal: [tailpipe-water-colt]", "(4,14): error unknown-id: unknown 'normal' rule 'tailpipe-water-colt'; did you mean 'tailpipe-water-cold'?")]
    [InlineData("driving: sooon", "(4,14): error unknown-word: 'sooon' is no value of 'driving'; it is one of normal, soon, workshopOnly, stop, unknown; did you mean 'soon'?")]
    [InlineData("driving: [normal, soon, workshopOnly, stop, unknown]", "(4,14): error asks-nothing: this names every value of 'driving', so it asks for nothing; leave it out")]
    [InlineData("among: {0: [brake-pad-thickness]}", "(4,13): error out-of-range: '0' is no count of steps from 1 to 50")]
    [InlineData("among: {1: [brake-pad-thickness, brake-disc-thickness]}", "(4,13): error out-of-range: 2 checks cannot all be among the first 1")]
    [InlineData("among: [brake-pad-thickness]", "(4,12): error wrong-shape: 'among' must be a mapping such as {3: [check, check]}, not a list")]
    [InlineData("judged: {brake-pad-thicknes: major}", "(4,14): error unknown-id: unknown check 'brake-pad-thicknes'; did you mean 'brake-pad-thickness'?")]
    [InlineData("judged: {brake-pad-thickness: major}", "(4,14): error asks-nothing: the case gives no finding of 'brake-pad-thickness', so there is nothing to judge")]
    [InlineData("judged: {tyre-tread-depth: bad}", "(4,14): error asks-nothing", "(4,32): error unknown-word: 'bad' is no value of 'judged'; it is one of none, minor, major, dangerous")]
    [InlineData("judged: {}", "(4,13): error empty-list: 'judged' is empty; name a check and its class, or leave it out")]
    [InlineData("judged: major", "(4,13): error wrong-shape: 'judged' must be a mapping such as {check: minor}, not 'major'")]
    [InlineData("frist: brake-pad-thickness", "(4,5): error unknown-member: unknown member 'frist' of a case; it may have", "(2,9): error empty-case: the case 'squeal' asserts nothing; add one of")]
    [InlineData("# only a comment", "(2,9): error empty-case: the case 'squeal' asserts nothing; add one of first, among, never, cautions, noCautions, suspect, driving, normal, judged")]
    public void Read_WrongExpectation_SaysWhereAndWhat(string expectation, params string[] errors)
    {
        var set = OneCase.With(expectation);

        Assert.Empty(set.Cases);
        Assert.Equal(errors.Length, set.Errors.Count);
        Assert.All(errors, error => Assert.Contains(set.Errors, one => one.ToString().StartsWith($"brakes/own.cases.yaml{error}", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("{vehicle: {modelYear: 2016, startStop: true}}", 51)]
    [InlineData("{vehicle: {modelYear: new}}", 34)]
    [InlineData("{vehicle: {modelYear: \"2016\"}}", 34)]
    [InlineData("{vehicle: {}, symptoms: [{symptom: squeal, sometimes: true}]}", 66)]
    [InlineData("{complaint: It squeals.}", 12)]
    public void Read_WrongRequest_SaysWhere(string given, int column)
    {
        var error = Assert.Single(OneCase.Read($"cases:\n  - id: wrong\n    given: {given}\n    driving: soon\n").Errors);

        Assert.Equal(("brakes/own.cases.yaml", 3, column), (error.File, error.Line, error.Column));
    }

    [Fact]
    public void Read_CaseWithoutRequest_SaysSo() => Assert.Equal(
        "brakes/own.cases.yaml(2,5): error missing-member: 'given' is missing from this case: what does the caller ask?",
        Assert.Single(OneCase.Read("cases:\n  - id: wrong\n    driving: soon\n").Errors).ToString());

    /// <summary>Such a case is right, and asked; its author is told.</summary>
    [Fact]
    public void Read_SameRequestTwice_IsDoubtfulAndKept()
    {
        var set = OneCase.Read($"cases:\n  - id: a\n    given: {OneCase.Squeal}\n    driving: soon\n  - id: b\n    given: {OneCase.Squeal}\n    first: brake-pad-thickness\n");

        Assert.Equal("brakes/own.cases.yaml(5,9): warning says-again: the case 'b' asks what the case 'a' asks; put what they expect into one", Assert.Single(set.Warnings).ToString());
        Assert.Equal(2, set.Cases.Count);
    }

    [Fact]
    public void Read_SameIdTwice_NamesTheFirst()
    {
        var one = $"  - id: same\n    given: {OneCase.Squeal}\n    driving: soon\n";
        var error = Assert.Single(OneCase.Read($"cases:\n{one}{one}").Errors);

        Assert.Equal("brakes/own.cases.yaml(5,9): error id-taken: the case 'same' stands already in brakes/own.cases.yaml, line 2", error.ToString());
    }

    [Fact]
    public void Read_OneCaseOfTwoIsWrong_KeepsTheOther()
    {
        var set = OneCase.Read($"cases:\n  - id: a\n    given: {OneCase.Squeal}\n    driving: soon\n  - id: b\n    given: {OneCase.Squeal}\n    driving: never\n");

        Assert.Equal("a", Assert.Single(set.Cases).Id);
    }
}
