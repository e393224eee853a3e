using Advice.Knowledge.Checks;
using Advice.Symptoms;
using Advice.Vehicles;

namespace Advice.Rules.Tests;

public class StepChoiceTests
{
    [Fact]
    public void Choose_CheckWithSeveralValuesForOneFault_FindsItByAnyOfThem()
    {
        var @case = new Case { AsOf = new DateOnly(2026, 3, 1), Vehicle = Vehicle.Unknown, Reports = [new Report("wipers-fail", [], null, true)] };
        var advised = new Assessment(RepositoryRules.Book).Of(@case);
        var first = advised.Steps[0];
        var several = first.Check.Detects.Where(detects => detects.Fault == "wiper-linkage-worn").ToList();

        Assert.Equal("wiper-sweep", first.Check.Id);
        Assert.True(several.Count > 1);
        Assert.Equal(
            advised.Suspicion.Raised.Sum(suspect => suspect.Weight * SumOfValues(first.Check, suspect.Instance.Fault.Id)), first.Ranked.HarmFound, 12);
    }

    private static double SumOfValues(Check check, string fault)
    {
        var sum = 0.0;
        foreach (var detects in check.Detects)
            sum += detects.Fault == fault ? detects.Surely : 0;
        return sum;
    }
}
