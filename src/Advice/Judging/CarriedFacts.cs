using Advice.Documents.Requests;
using Advice.Knowledge;
using Advice.Vehicles;

namespace Advice.Judging;

/// <summary>Facts of the vehicle that a finding carries for its arithmetic, such as the class of its brake fluid: they choose the limits too.</summary>
internal static class CarriedFacts
{
    /// <summary>The vehicle as the finding knows it: whoever holds the part knows better than whoever described the vehicle.</summary>
    public static Vehicle Vehicle(Catalogue catalogue, FindingReport finding, Vehicle vehicle)
    {
        var facts = catalogue.Checks[finding.Check].Arithmetic.SelectMany(named => named.Facts).ToList();
        if (finding.With is not { } with || facts.Count == 0)
            return vehicle;
        var words = new Dictionary<string, string>(vehicle.Words);
        foreach (var (input, fact) in facts)
        {
            if (with.All.FirstOrDefault(given => given.Key.Name == input).Value is string name)
                words[fact] = catalogue.Facts[fact].Values.First(value => value.Value == name).Key;
        }

        return vehicle with { Words = words };
    }
}
