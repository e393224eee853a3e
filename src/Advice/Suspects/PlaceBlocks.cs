using System.Collections.Immutable;
using Advice.Evidence;
using Advice.Knowledge;

namespace Advice.Suspects;

/// <summary>Splits a fault into one instance per group of places that the signs of the case tell apart.</summary>
public sealed class PlaceBlocks(Catalogue catalogue)
{
    /// <summary>The blocks, by first place. A block that no sign fits is left out: nothing is said about it.</summary>
    public IEnumerable<PlaceBlock> Of(Fault fault, ImmutableArray<Link> links)
    {
        if (fault.Places.Count == 0)
            return [new PlaceBlock(null, [], 1, links)];

        var stated = Stated(links);
        if (stated.Count == 0)
            return [new PlaceBlock(Name(fault, fault.Places), fault.Places, 1, links)];
        return fault.Places
            .GroupBy(place => string.Concat(stated.Select(position => catalogue.PositionsOverlap(place, position) ? '1' : '0')))
            .Select(group => Block(fault, [.. group], links))
            .Where(block => block.Links.Length > 0);
    }

    private static IReadOnlyList<string> Stated(ImmutableArray<Link> links)
    {
        List<string>? stated = null;
        foreach (var link in links)
        {
            if (link.Seen.Position is { } position)
                (stated ??= []).Add(position);
        }

        return stated is null ? [] : [.. stated.Distinct().Order(StringComparer.Ordinal)];
    }

    private PlaceBlock Block(Fault fault, IReadOnlyList<string> places, ImmutableArray<Link> links) => new(
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
