using Advice.Documents.Requests;
using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Words;
using Advice.Vehicles;

namespace Advice.Judging;

/// <summary>Which limits apply to a finding on this vehicle under this law.</summary>
public sealed class LimitChoice(Catalogue catalogue)
{
    /// <summary>Our limits on a value at a position; without a jurisdiction those of all.</summary>
    public IReadOnlyList<Limit> For(Check check, string? position, Case @case) =>
        [.. Applying(check, position, @case).Where(limit => limit.AcrossAxle is null)];

    /// <summary>Our limits on how far left and right may differ on an axle.</summary>
    public IReadOnlyList<Limit> AcrossAxle(Check check, string? axle, Case @case) =>
        [.. Applying(check, axle, @case).Where(limit => limit.AcrossAxle is not null)];

    /// <summary>The limit that the caller supplies. Passing it is as bad as passing ours, but at most major: it may stand well above the
    /// point at which the part becomes dangerous.</summary>
    public Limit Supplied(Check check, SuppliedLimit supplied)
    {
        var worst = check.Measure!.GivenLimit
            ?? catalogue.LimitsByCheck[check.Id].Where(limit => limit.AcrossAxle is null).Select(limit => limit.Deficiency).DefaultIfEmpty(Deficiency.Major).Max();
        var source = new Source(Grade.Primary, supplied.Source ?? "given with the request", null, null);
        return new Limit("supplied", check.Id, supplied.Minimum, supplied.Maximum, supplied.Unit, null, VehicleCondition.Always, null,
            worst > Deficiency.Major ? Deficiency.Major : worst, new Text(Bounds(supplied, Audience.Technician), Bounds(supplied, Audience.Owner)), source);
    }

    private string Bounds(SuppliedLimit supplied, Audience audience) => string.Join(" and ", new[]
    {
        supplied.Minimum is { } low ? catalogue.Say(audience, Sentences.AtLeast, FormattableString.Invariant($"{low} {supplied.Unit}")) : null,
        supplied.Maximum is { } high ? catalogue.Say(audience, Sentences.AtMost, FormattableString.Invariant($"{high} {supplied.Unit}")) : null,
    }.OfType<string>());

    /// <summary>Of what depends on a fact that is not known: advice of the trade counts where it is likelier meant than not; so does a law beside
    /// one under which the vehicle falls for sure. Where there is none such, all of them count, so that the strictest decides.</summary>
    private static bool Concerns(Limit limit, IReadOnlyList<Limit> possible, Vehicle vehicle) =>
        limit.When.IsLikely(vehicle)
        || (limit.Jurisdiction is not null && !possible.Any(other => other.Jurisdiction is not null && IsSameSide(other, limit) && other.When.Test(vehicle) == Truth.Yes));

    private static bool IsSameSide(Limit one, Limit other) =>
        one.Deficiency == other.Deficiency && (one.Minimum is null) == (other.Minimum is null) && one.AcrossAxle == other.AcrossAxle;

    /// <summary>Where a country or state sets its own value for this vehicle, that of the law around it does not count.</summary>
    private IEnumerable<Limit> Applying(Check check, string? position, Case @case)
    {
        List<string> laws = [.. catalogue.Laws(@case.Jurisdiction)];
        List<Limit> possible =
        [
            .. catalogue.LimitsByCheck[check.Id]
                .Where(limit => (limit.Jurisdiction is null || laws.Count == 0 || laws.Contains(limit.Jurisdiction))
                    && limit.When.Test(@case.Vehicle) != Truth.No
                    && (limit.Position is null || position is null || catalogue.PositionsOverlap(limit.Position, position)))
                .Select(limit => OnVehicle(limit, @case.Vehicle)).OfType<Limit>(),
        ];
        List<Limit> applying = [.. possible.Where(limit => Concerns(limit, possible, @case.Vehicle))];
        return applying.Where(limit => !applying.Exists(nearer => Replaces(nearer, limit)));

        bool Replaces(Limit nearer, Limit limit) =>
            nearer.Jurisdiction is not null && limit.Jurisdiction is not null && laws.IndexOf(nearer.Jurisdiction) < laws.IndexOf(limit.Jurisdiction)
            && IsSameSide(nearer, limit) && nearer.Position == limit.Position;
    }

    private static Limit? OnVehicle(Limit limit, Vehicle vehicle) =>
        limit.Times is null ? limit
        : vehicle.Number(limit.Times) is { } times ? limit with { Minimum = limit.Minimum * times, Maximum = limit.Maximum * times, Times = null }
        : null;
}
