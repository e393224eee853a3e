using Advice.Knowledge.Conditions;

namespace Advice.Knowledge.Limits;

/// <summary>A test on the last service given for an item; unknown while none was reported.</summary>
public sealed record ServiceTest(string Item, double? OlderThanYears, double? OlderThanKm, double? WithinYears, double? WithinKm)
{
    /// <summary>Whether a service that long ago passes.</summary>
    /// <param name="years">Years since, if known.</param>
    /// <param name="km">Distance since, km, if known.</param>
    public Truth Test(double? years, double? km)
    {
        var old = Or(Over(years, OlderThanYears), Over(km, OlderThanKm));
        var recent = And(Within(years, WithinYears), Within(km, WithinKm));
        var asksOld = OlderThanYears is not null || OlderThanKm is not null;
        var asksRecent = WithinYears is not null || WithinKm is not null;
        return asksOld && asksRecent ? (Truth)Math.Min((int)old, (int)recent) : asksOld ? old : recent;
    }

    private static Truth? Over(double? value, double? limit) =>
        limit is null ? null : value is null ? Truth.Unknown : value > limit ? Truth.Yes : Truth.No;

    private static Truth? Within(double? value, double? limit) =>
        limit is null ? null : value is null ? Truth.Unknown : value <= limit ? Truth.Yes : Truth.No;

    private static Truth Or(Truth? a, Truth? b) => (Truth)Math.Max((int)(a ?? Truth.No), (int)(b ?? Truth.No));

    private static Truth And(Truth? a, Truth? b) => (Truth)Math.Min((int)(a ?? Truth.Yes), (int)(b ?? Truth.Yes));
}
