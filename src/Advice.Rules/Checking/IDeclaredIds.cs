using Advice.Rules.Files;

namespace Advice.Rules.Checking;

/// <summary>Ids that rule files declare.</summary>
internal interface IDeclaredIds : IIds
{
    /// <summary>Where an entry stands.</summary>
    Place PlaceOf(string id);

    /// <summary>Declares an id; false if it was taken, with the place of the first.</summary>
    bool Declare(string id, Place place, out Place first);
}
