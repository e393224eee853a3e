using Advice.Evidence;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;

namespace Advice.Rules.Rows;

/// <summary>Where one sign is seen the other is certain.</summary>
internal sealed class ImpliesRow(ImpliesRule rule) : SignRow
{
    /// <summary>The rule.</summary>
    public ImpliesRule Rule => rule;

    /// <inheritdoc/>
    public override bool Holds(Seen seen, Inquiry inquiry) =>
        seen.Sign.Present && seen.Concerns(rule.Occasions, inquiry.Catalogue) && !inquiry.ReportsAny(rule.Without) && rule.When.IsLikely(inquiry.Case.Vehicle);

    /// <summary>The sign that follows. It happens when and where the first does, as far as its kind has a when and where.</summary>
    public SeenSign Implied(Seen seen) =>
        rule.Implied.Kind == SignKind.Symptom
            ? new SeenSign(rule.Implied, seen.Sign.Occasions, seen.Sign.Position, true)
            : new SeenSign(rule.Implied, [], null, true);
}
