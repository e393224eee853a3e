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

    /// <summary>Our limits that apply at a position; without a jurisdiction those of all. Where a country or state sets its own value for
    /// this vehicle, that of the law around it does not count.</summary>
    public IReadOnlyList<Limit> For(Check check, string? position, Vehicle vehicle, string? jurisdiction)
    {
        List<string> laws = [.. Chain(jurisdiction)];
        List<Limit> applying =
        [
            .. catalogue.LimitsByCheck[check.Id].Where(limit =>
                (limit.Jurisdiction is null || jurisdiction is null || laws.Contains(limit.Jurisdiction))
                && limit.When.IsLikely(vehicle)
                && (limit.Position is null || position is null || catalogue.PositionsOverlap(limit.Position, position))),
        ];
        return [.. applying.Where(limit => !applying.Any(nearer => Replaces(nearer, limit)))];

        bool Replaces(Limit nearer, Limit limit) =>
            jurisdiction is not null && nearer.Jurisdiction is not null && limit.Jurisdiction is not null
            && laws.IndexOf(nearer.Jurisdiction) < laws.IndexOf(limit.Jurisdiction)
            && nearer.Deficiency == limit.Deficiency && (nearer.Minimum is null) == (limit.Minimum is null) && nearer.Position == limit.Position;
    }

    private IEnumerable<string> Chain(string? jurisdiction)
    {
        for (var law = jurisdiction; law is not null; law = catalogue.Jurisdictions[law].Within)
            yield return law;
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
