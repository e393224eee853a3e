using Advice.Rules.Files;

namespace Advice.Rules.Checking;

/// <summary>The ids of one kind of entry.</summary>
internal interface IIds
{
    /// <summary>What an entry is called in messages.</summary>
    string Noun { get; }

    /// <summary>All ids.</summary>
    IEnumerable<string> All { get; }

    /// <summary>Whether there is such an entry.</summary>
    bool Contains(string id);

    /// <summary>Where an entry stands.</summary>
    Place PlaceOf(string id);

    /// <summary>Declares an id; false if it was taken, with the place of the first.</summary>
    bool Declare(string id, Place place, out Place first);
}
