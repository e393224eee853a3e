using Advice.Evidence;
using Advice.Intake;
using Advice.Rules.Cases;
using Advice.Steps;
using Advice.Suspects;

namespace Advice.Rules.Bench;

/// <summary>Times the stages of the way of a request, each on the results of those before it.</summary>
public sealed class StageClock
{
    private readonly TimeProvider _time;
    private readonly (string Stage, Action Run)[] _stages;
    private readonly int _cases;

    /// <summary>A clock for the cases of a rule set.</summary>
    public StageClock(IRuleBook rules, IReadOnlyList<RuleCase> cases, TimeProvider time)
    {
        ArgumentNullException.ThrowIfNull(rules);
        ArgumentNullException.ThrowIfNull(cases);
        var catalogue = rules.Catalogue;
        var reader = new CaseReader(catalogue);
        var (suspecting, steps, advice) = (new Suspecting(catalogue), new StepChoice(catalogue), new GiveAdvice(rules, new CaseClock()));
        var read = cases.Select(one => reader.Read(one.Given, CaseClock.Today).Case).ToList();
        var matched = read.Select(@case => (Case: @case, Evidence: rules.Open(@case).Gather())).ToList();
        (_time, _cases) = (time, cases.Count);
        _stages =
        [
            ("reading the request", () => Each(cases, one => reader.Read(one.Given, CaseClock.Today))),
            ("matching", () => Each(read, @case => rules.Open(@case).Gather())),
            ("inference and ranking", () => Each(matched, one => steps.Choose(one.Case, suspecting.Suspect(one.Case, one.Evidence), mayDrive: true))),
            ("whole advice", () => Each(cases, one => advice.To(one.Given))),
        ];
    }

    /// <summary>The stages in order, the whole last.</summary>
    /// <param name="rounds">How often all cases are gone through for each stage, beside a third as often before the clock starts.</param>
    public IReadOnlyList<StageTime> Times(int rounds)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(rounds, 1);
        for (var i = 0; i < (rounds / 3) + 1; i++)
        {
            foreach (var (_, run) in _stages)
                run();
        }

        return [.. _stages.Select(stage => new StageTime(stage.Stage, Median([.. Enumerable.Range(0, rounds).Select(_ => Microseconds(stage.Run))]) / Math.Max(1, _cases)))];
    }

    private double Microseconds(Action run)
    {
        var start = _time.GetTimestamp();
        run();
        return _time.GetElapsedTime(start).TotalMicroseconds;
    }

    private static double Median(double[] values)
    {
        Array.Sort(values);
        return values[values.Length / 2];
    }

    private static void Each<TItem, TResult>(IReadOnlyList<TItem> items, Func<TItem, TResult> work)
    {
        foreach (var item in items)
            work(item);
    }
}
