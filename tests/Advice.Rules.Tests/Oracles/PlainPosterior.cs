using Advice.Evidence;
using Advice.Knowledge;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;
using Advice.Vehicles;

namespace Advice.Rules.Tests.Oracles;

/// <summary>
/// How probable the faults of a case are, by adding up every world: every way in which each fault, at each group of places that the
/// signs tell apart, is there or not. Written from the design and rules/README.md.
/// </summary>
internal sealed class PlainPosterior(Catalogue known, Case @case, CaseEvidence evidence)
{
    private sealed record Cause(string Name, double Prior, List<Link> Links);

    private sealed record Noticed(SeenSign Sign, double Leak, double[] Strengths);

    /// <summary>Probability of each fault at its places.</summary>
    public Dictionary<string, double> ByFaultAndPlaces()
    {
        var causes = evidence.Links.GroupBy(link => link.Fault).SelectMany(links => Causes(known.Faults[links.Key], [.. links])).ToList();
        var noticed = Leading().Select(sign => new Noticed(sign, Leak(sign), [.. causes.Select(cause => Strength(sign, cause))])).ToList();
        var sums = new double[causes.Count];
        var total = 0.0;
        for (var world = 0; world < 1 << causes.Count; world++)
        {
            var probability = 1.0;
            for (var i = 0; i < causes.Count; i++)
                probability *= (world >> i & 1) == 1 ? causes[i].Prior : 1 - causes[i].Prior;
            foreach (var one in noticed)
            {
                var absent = 1 - one.Leak;
                for (var i = 0; i < causes.Count; i++)
                    absent *= (world >> i & 1) == 1 ? 1 - one.Strengths[i] : 1;
                probability *= one.Sign.Present ? 1 - absent : absent;
            }

            total += probability;
            for (var i = 0; i < causes.Count; i++)
                sums[i] += (world >> i & 1) * probability;
        }

        return causes.Select((cause, i) => (cause.Name, P: sums[i] / total)).ToDictionary(one => one.Name, one => one.P);
    }

    /// <summary>A fault is one cause for each group of its places that no sign tells apart; they share its base rate.</summary>
    private IEnumerable<Cause> Causes(Fault fault, List<Link> links)
    {
        var odds = fault.Prior / (1 - fault.Prior) * fault.Ageing.Factor(@case.Vehicle.Number(Vehicle.OdometerKm), @case.Vehicle.Number(Vehicle.AgeYears));
        foreach (var factor in evidence.Factors.Where(factor => factor.Fault == fault.Id))
            odds *= factor.Rule.Odds;
        var prior = odds / (1 + odds) * VehicleFit.Share(known.FitsByFault[fault.Id], @case.Vehicle);
        if (fault.Places.Count == 0)
            return [new Cause(fault.Id, Math.Clamp(prior, 1e-5, 0.5), links)];
        return
            from place in fault.Places
            group place by string.Join(' ', links.Where(link => Fits(link, place)).Select(link => link.Seen).Distinct()) into places
            let fitting = links.Where(link => Fits(link, places.First())).ToList()
            where fitting.Count > 0
            select new Cause($"{fault.Id} {string.Join('+', places)}", Math.Clamp(prior * places.Count() / fault.Places.Count, 1e-5, 0.5), fitting);
    }

    private bool Fits(Link link, string place) =>
        link.Seen.Position is not { } position || Wheels(position).Intersect(Wheels(place)).Any();

    private IEnumerable<string> Wheels(string position) => known.Positions[position].Parts;

    /// <summary>What counts: all denials, and of what was noticed that which nothing more special stands for.</summary>
    private IEnumerable<SeenSign> Leading()
    {
        var seen = evidence.Links.Select(link => link.Seen).Concat(evidence.Implied.Select(one => one.From)).ToHashSet();
        return seen.Where(sign => !sign.Present || !(
            evidence.Implied.Any(one => one.Implied.Sign == sign.Sign)
            || (Vague(sign) && seen.Any(other => other.Present && other.Sign == sign.Sign && !Vague(other)))));
    }

    private static bool Vague(SeenSign sign) => sign.Occasions.Count == 0 && sign.Position is null;

    /// <summary>By its link to the sign itself; else by one to what the sign implies, as often as that takes this form.</summary>
    private double Strength(SeenSign leading, Cause cause)
    {
        var own = cause.Links.Where(link => link.Seen.Equals(leading)).ToList();
        if (own.Count > 0 || !leading.Present)
            return own.Select(link => link.Strength).DefaultIfEmpty().Max();
        var implied = Implied(leading.Sign).ToHashSet();
        return cause.Links.Where(link => link.Seen.Present && implied.Contains(link.Seen.Sign))
            .Select(link => link.Strength * Form(Rate(leading.Sign), Rate(link.Seen.Sign))).DefaultIfEmpty().Max();
    }

    private IEnumerable<Sign> Implied(Sign sign) =>
        evidence.Implied.Where(one => one.From.Sign == sign).SelectMany(one => Implied(one.Implied.Sign).Append(one.Implied.Sign));

    private static double Form(double leading, double implied) => leading == 0 ? 1 : Math.Min(1, leading / implied);

    /// <summary>Share of vehicles in which listed faults show the sign.</summary>
    private double Rate(Sign sign)
    {
        var silent = 1.0;
        foreach (var fault in known.Faults.Values)
            silent *= 1 - fault.Prior * known.Rules.Values.OfType<ShowsRule>().Where(rule => rule.Fault == fault.Id && rule.Sign == sign).Select(rule => rule.Often).DefaultIfEmpty().Max();
        return 1 - silent;
    }

    /// <summary>The share of reports that no fault explains stays unexplained; a normal explanation takes its share of the rest.</summary>
    private double Leak(SeenSign sign)
    {
        if (sign.Sign.Kind == SignKind.Outcome)
            return known.Checks[sign.Sign.Id].FalseAlarm;
        var share = sign.Sign.Kind == SignKind.Code ? 0.05 : known.Symptoms[sign.Sign.Id].UnexplainedShare;
        var leak = Math.Clamp(share / (1 - share) * Rate(sign.Sign), 1e-4, 0.05);
        var explained = evidence.Normals.Where(normal => normal.Seen.Equals(sign)).Aggregate(1 - share, (rest, normal) => rest * (1 - normal.Rule.Share));
        return Math.Min(0.5, leak * (1 - explained) / explained / (share / (1 - share)));
    }
}
