using Advice.Evidence;
using Advice.Knowledge;
using Advice.Knowledge.Signs;
using Advice.Rules.Rows;
using Advice.Symptoms;

namespace Advice.Rules.Network;

/// <summary>A case that was run before: what a session for the same case with one more report need not run again.</summary>
/// <param name="Signs">Its signs, reported and implied.</param>
/// <param name="Evidence">What the rules found to apply.</param>
internal sealed record KnownCase(IReadOnlyList<Seen> Signs, CaseEvidence Evidence)
{
    /// <summary>The faults that it has links or factors of.</summary>
    public HashSet<string> LinkedFaults { get; } = [.. Evidence.Links.Select(link => link.Fault), .. Evidence.Factors.Select(factor => factor.Fault)];

    /// <summary>Nothing was run before.</summary>
    public static KnownCase Nothing { get; } = new([], new CaseEvidence([], [], [], []));

    /// <summary>The case with its evidence.</summary>
    public static KnownCase Of(Case @case, CaseEvidence evidence, Catalogue catalogue) => new(
        [
            .. SignsOf(@case, catalogue).Select(sign => new Seen(sign, reported: true)),
            .. evidence.Implied.Select(one => new Seen(one.Implied, reported: false)),
        ],
        evidence);

    /// <summary>Whether something that was found to apply may no longer do so, or otherwise, once the symptom is reported too: a rule
    /// asks that it is not reported, or it was only implied so far.</summary>
    public bool IsChangedBy(Report added, TriggerIndex index) => added.Present
        && (Signs.Any(seen => index.WithoutOf(seen.Sign.Sign).Contains(added.Symptom))
            || Evidence.Implied.Any(one => one.Implied.Sign == Sign.Symptom(added.Symptom)));

    /// <summary>The sign that a report states.</summary>
    public static SeenSign SignOf(Report report) => new(Sign.Symptom(report.Symptom), report.Occasions, report.Position, report.Present);

    /// <summary>The signs that a case states.</summary>
    public static IEnumerable<SeenSign> SignsOf(Case @case, Catalogue catalogue)
    {
        foreach (var report in @case.Reports)
            yield return SignOf(report);
        foreach (var code in @case.Codes)
            yield return new SeenSign(Sign.Code(code), [], null, true);
        foreach (var outcome in @case.Outcomes)
        {
            if (outcome.Value is not null)
            {
                yield return new SeenSign(Sign.Outcome(outcome.Check, outcome.Value), [], outcome.Position, true);
                continue;
            }

            foreach (var abnormal in catalogue.Checks[outcome.Check].Abnormal)
                yield return new SeenSign(Sign.Outcome(outcome.Check, abnormal.Id), [], outcome.Position, false);
        }
    }
}
