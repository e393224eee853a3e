using Advice.Evidence;
using Advice.Knowledge;

namespace Advice.Suspects;

/// <summary>Splits a fault into one instance per group of places that the signs of the case tell apart.</summary>
public sealed class PlaceBlocks(Catalogue catalogue)
{
    /// <summary>The blocks, by first place. A block that no sign fits is left out: nothing is said about it.</summary>
    public IEnumerable<PlaceBlock> Of(Fault fault, IReadOnlyList<Link> links)
    {
        if (fault.Places.Count == 0)
            return [new PlaceBlock(null, [], 1, links)];

        var stated = links.Select(link => link.Seen.Position).OfType<string>().Distinct().Order(StringComparer.Ordinal).ToList();
        if (stated.Count == 0)
            return [Block(fault, fault.Places, links)];
        return fault.Places
            .GroupBy(place => string.Concat(stated.Select(position => catalogue.PositionsOverlap(place, position) ? '1' : '0')))
            .Select(group => Block(fault, [.. group], links))
            .Where(block => block.Links.Count > 0);
    }

    private PlaceBlock Block(Fault fault, IReadOnlyList<string> places, IReadOnlyList<Link> links) => new(
        Name(fault, places),
        places,
        (double)places.Count / fault.Places.Count,
        [.. links.Where(link => link.Seen.Position is null || catalogue.PositionsOverlap(places[0], link.Seen.Position))]);

    private string? Name(Fault fault, IReadOnlyList<string> places)
    {
        if (places.Count == 1)
            return places[0];
        if (places.Count == fault.Places.Count)
            return null;
        var wheels = places.SelectMany(place => catalogue.Positions[place].Parts).ToHashSet();
        return catalogue.Positions.Values.Where(position => wheels.SetEquals(position.Parts))
            .Select(position => position.Id).Order(StringComparer.Ordinal).FirstOrDefault();
    }
}
