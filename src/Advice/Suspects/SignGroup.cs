using System.Collections.Immutable;
using Advice.Evidence;
using Advice.Inference;
using Advice.Knowledge;
using Advice.Knowledge.Codes;
using Advice.Knowledge.Signs;

namespace Advice.Suspects;

/// <summary>
/// Signs of a case that count as one piece of evidence: a sign, what it implies, and vaguer reports of the same symptom.
/// </summary>
public sealed class SignGroup
{
    private readonly SeenSign _leading;
    private readonly double _leak;
    private readonly Dictionary<SeenSign, double> _led;

    private SignGroup(SeenSign leading, double leak, Dictionary<SeenSign, double> led) => (_leading, _leak, _led) = (leading, leak, led);

    /// <summary>The groups of a case, by leading sign.</summary>
    public static IEnumerable<SignGroup> Of(CaseEvidence evidence, Catalogue catalogue)
    {
        var seen = evidence.Links.Select(link => link.Seen).Concat(evidence.Implied.Select(implied => implied.From)).Distinct().ToList();
        var implied = evidence.Implied.Select(one => one.Implied.Sign).ToHashSet();
        var leaders = seen.Where(sign => !sign.Present || (!implied.Contains(sign.Sign) && !IsVaguer(sign, seen)))
            .OrderBy(sign => sign.ToString(), StringComparer.Ordinal);
        foreach (var leader in leaders)
        {
            var led = leader.Present && evidence.Implied.Count > 0 ? Followers(leader, seen, evidence.Implied) : [];
            yield return new SignGroup(
                leader, LeakOf(leader, evidence, catalogue), led.ToDictionary(member => member, member => ShareLedBy(leader, member, catalogue)));
        }
    }

    /// <summary>The manifestation of this group. A fault linked to the leading sign counts by that link alone; one linked only to what
    /// that sign implies counts as often as the implied sign takes the leading form.</summary>
    public Manifestation Manifest(IReadOnlyList<FaultInstance> instances)
    {
        var links = new List<CauseLink>();
        for (var cause = 0; cause < instances.Count; cause++)
        {
            var leads = false;
            foreach (var link in instances[cause].Links)
            {
                if (!link.Seen.Equals(_leading))
                    continue;
                leads = true;
                links.Add(new CauseLink(cause, link.Strength));
            }

            if (!leads && _led.Count > 0)
                AddLed(instances[cause].Links, cause, links);
        }

        return new Manifestation(_leading.ToString(), _leading.Present, _leak, links);
    }

    private void AddLed(ImmutableArray<Link> own, int cause, List<CauseLink> links)
    {
        foreach (var link in own)
        {
            if (_led.TryGetValue(link.Seen, out var share))
                links.Add(new CauseLink(cause, link.Strength * share));
        }
    }

    private static bool IsVaguer(SeenSign sign, List<SeenSign> seen) =>
        sign is { Occasions.Count: 0, Position: null }
        && seen.Exists(other => other.Present && other.Sign == sign.Sign && (other.Occasions.Count > 0 || other.Position is not null));

    /// <summary>What follows from the leading sign.</summary>
    private static HashSet<SeenSign> Followers(SeenSign leader, List<SeenSign> seen, IReadOnlyList<ImpliedSign> implied)
    {
        var signs = new HashSet<Sign> { leader.Sign };
        for (var grown = true; grown;)
        {
            grown = false;
            foreach (var one in implied)
                grown |= signs.Contains(one.From.Sign) && signs.Add(one.Implied.Sign);
        }

        signs.Remove(leader.Sign);
        return [.. seen.Where(sign => sign.Present && signs.Contains(sign.Sign))];
    }

    // Where no fault is linked to the leading sign itself, all stand by the implied one alone and none is ahead.
    private static double ShareLedBy(SeenSign leader, SeenSign member, Catalogue catalogue)
    {
        if (catalogue.ShownRates.GetValueOrDefault(leader.Sign) is not (> 0 and var leading))
            return 1;
        return Math.Min(1, leading / catalogue.ShownRates[member.Sign]);
    }

    private static double LeakOf(SeenSign sign, CaseEvidence evidence, Catalogue catalogue)
    {
        if (sign.Sign.Kind == SignKind.Outcome)
            return catalogue.Checks[sign.Sign.Id].FalseAlarm;
        var leak = catalogue.Leaks[sign.Sign];
        var unexplained = sign.Sign.Kind == SignKind.Code ? TroubleCode.UnexplainedShare : catalogue.Symptoms[sign.Sign.Id].UnexplainedShare;
        var explained = 1 - unexplained;
        foreach (var normal in evidence.Normals.Where(normal => normal.Seen == sign))
            explained *= 1 - normal.Rule.Share;

        // The leak stands for the odds of "none of the listed faults"; what is normal raises those odds.
        return Math.Min(0.5, leak * ((1 - explained) / explained) / (unexplained / (1 - unexplained)));
    }
}
