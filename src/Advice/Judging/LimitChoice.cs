using Advice.Documents;
using Advice.Knowledge;
using Advice.Vehicles;

namespace Advice.Judging;

/// <summary>Which limits apply to a finding on this vehicle under this law.</summary>
public sealed class LimitChoice(Catalogue catalogue)
{
    /// <summary>The limits that apply. A limit that the caller supplies wins over all of ours.</summary>
    public IReadOnlyList<Limit> For(Check check, FindingReport finding, Vehicle vehicle, string? jurisdiction) =>
        finding.Limit is { } supplied ? [Supplied(check, supplied)] : For(check, finding.Position, vehicle, jurisdiction);

    /// <summary>Our limits that apply at a position; without a jurisdiction those of all.</summary>
    public IReadOnlyList<Limit> For(Check check, string? position, Vehicle vehicle, string? jurisdiction) =>
        [.. catalogue.LimitsByCheck[check.Id].Where(limit =>
            Governs(limit.Jurisdiction, jurisdiction)
            && limit.When.IsLikely(vehicle)
            && (limit.Position is null || position is null || catalogue.PositionsOverlap(limit.Position, position)))];

    private bool Governs(string? limit, string? jurisdiction)
    {
        if (limit is null || jurisdiction is null)
            return true;
        for (var law = jurisdiction; law is not null; law = catalogue.Jurisdictions[law].Within)
        {
            if (law == limit)
                return true;
        }

        return false;
    }

    private Limit Supplied(Check check, SuppliedLimit supplied)
    {
        var worst = catalogue.LimitsByCheck[check.Id].Select(limit => limit.Deficiency).DefaultIfEmpty(Deficiency.Major).Max();
        var source = new Source(Grade.Primary, supplied.Source ?? "given with the request", null, null);
        var bounds = FormattableString.Invariant(
            $"{(supplied.Minimum is { } low ? $"at least {low} {supplied.Unit}" : null)}{(supplied is { Minimum: not null, Maximum: not null } ? " and " : null)}{(supplied.Maximum is { } high ? $"at most {high} {supplied.Unit}" : null)}");
        return new Limit("supplied", check.Id, supplied.Minimum, supplied.Maximum, supplied.Unit, null, VehicleCondition.Always, null,
            worst < Deficiency.Major ? Deficiency.Major : worst, new Text(bounds, bounds), source);
    }
}
