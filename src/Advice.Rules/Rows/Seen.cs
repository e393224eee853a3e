using Advice.Evidence;
using Advice.Knowledge;

namespace Advice.Rules.Rows;

/// <summary>A sign of the case as a fact of the working memory. A class, not a record: equal facts would be one fact.</summary>
internal sealed class Seen(SeenSign sign, bool reported)
{
    /// <summary>The sign.</summary>
    public SeenSign Sign { get; } = sign;

    /// <summary>Whether it was reported; otherwise it is implied.</summary>
    public bool Reported { get; } = reported;

    /// <summary>Whether it speaks about a row that asks for those occasions. A denial that names an occasion ("fine on the highway")
    /// denies only what is asked for that occasion.</summary>
    public bool Concerns(IReadOnlyList<string> asked, Catalogue catalogue) =>
        (Sign.Present || Sign.Occasions.Count == 0 || asked.Count > 0) && catalogue.OccasionsFit(Sign.Occasions, asked);
}
