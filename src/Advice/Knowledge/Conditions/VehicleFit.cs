using Advice.Knowledge.Rules;
using Advice.Vehicles;

namespace Advice.Knowledge.Conditions;

/// <summary>Whether a vehicle has what some fits rules are about.</summary>
public static class VehicleFit
{
    private const double NearlyAll = 0.98;

    /// <summary>Probability that it has. Facts count once, however many rules ask for them.</summary>
    public static double Share(IEnumerable<FitsRule> fits, Vehicle vehicle)
    {
        List<(string Fact, double Share)>? leastByFact = null;
        foreach (var rule in fits)
        {
            foreach (var test in rule.When.Tests)
            {
                var share = test.ShareOn(vehicle);
                leastByFact ??= [];
                var known = 0;
                while (known < leastByFact.Count && leastByFact[known].Fact != test.Fact.Id)
                    known++;
                if (known == leastByFact.Count)
                    leastByFact.Add((test.Fact.Id, share));
                else if (share < leastByFact[known].Share)
                    leastByFact[known] = (test.Fact.Id, share);
            }
        }

        var product = 1.0;
        foreach (var (_, share) in leastByFact ?? [])
            product *= share;
        return product;
    }

    /// <summary>The same for a vehicle that has what other rules are about, as one with a leaking air spring has air springs.</summary>
    public static double Share(IEnumerable<FitsRule> fits, IEnumerable<FitsRule> given, Vehicle vehicle)
    {
        if (!fits.Any())
            return 1;
        var known = given.SelectMany(rule => rule.When.Tests).ToList();
        return Share(fits.Where(rule => !rule.When.Tests.All(test => known.Exists(test.FollowsFrom) && test.Test(vehicle) == Truth.Unknown)), vehicle);
    }

    /// <summary>A text that is the same for rules that ask the same.</summary>
    public static string Key(IEnumerable<FitsRule> fits) => string.Join(' ', fits.Select(rule => string.Join('&', rule.When.Tests.Select(
        test => FormattableString.Invariant($"{test.Fact.Id}:{string.Join('|', test.Words)}:{test.AtLeast}:{test.Below}")))));

    /// <summary>Completes "Only if …" by the first rule that the known facts leave open; null where they leave none open.</summary>
    public static string? OnlyIf(IEnumerable<FitsRule> fits, Vehicle vehicle) => fits.FirstOrDefault(rule => IsOpen(rule, vehicle))?.OnlyIf;

    /// <summary>Whether the known facts leave it open that the vehicle has what the rule is about. What nearly all have is no question.</summary>
    public static bool IsOpen(FitsRule rule, Vehicle vehicle) =>
        rule.When.Test(vehicle) == Truth.Unknown && rule.When.Share(vehicle) < NearlyAll;
}
