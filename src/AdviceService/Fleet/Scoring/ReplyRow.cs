using System.Globalization;
using System.Text.Json;

namespace AdviceService.Fleet.Scoring;

/// <summary>A reply as a row of a table: that of triage, or the errors of a problem.</summary>
internal sealed class ReplyRow
{
    public string? Id { get; set; }

    public int Line { get; set; }

    public string? Driving { get; set; }

    public double? ExpectedHarm { get; set; }

    /// <summary>Ids, joined by spaces.</summary>
    public string? Checks { get; set; }

    /// <summary>Ids, joined by spaces.</summary>
    public string? Faults { get; set; }

    public int? Minutes { get; set; }

    public bool? Lift { get; set; }

    public int? WithinDays { get; set; }

    public string? Revision { get; set; }

    /// <summary>Names, joined by spaces.</summary>
    public string? Overlays { get; set; }

    /// <summary>Each error as pointer and detail, joined by semicolons.</summary>
    public string? Problem { get; set; }

    /// <summary>Reads a reply.</summary>
    public static ReplyRow Of(ReadOnlySpan<byte> utf8Json)
    {
        using var reply = JsonDocument.Parse(utf8Json.ToArray());
        var json = reply.RootElement;
        var row = new ReplyRow { Id = Text(json.GetProperty("id")), Line = json.GetProperty("line").GetInt32() };
        if (json.TryGetProperty("problem", out var problem))
            row.Problem = string.Join("; ", problem.GetProperty("errors").EnumerateArray().Select(error => $"{error.GetProperty("pointer")} {error.GetProperty("detail")}"));
        else
            row.Take(json.GetProperty("triage"));
        return row;
    }

    private void Take(JsonElement triage)
    {
        Driving = triage.GetProperty("driving").GetString();
        ExpectedHarm = triage.GetProperty("expectedHarm").GetDouble();
        Checks = Joined(triage.GetProperty("checks"));
        Faults = Joined(triage.GetProperty("faults"));
        Minutes = triage.GetProperty("minutes").GetInt32();
        Lift = triage.GetProperty("lift").GetBoolean();
        WithinDays = triage.GetProperty("withinDays") is { ValueKind: JsonValueKind.Number } days ? days.GetInt32() : null;
        Revision = triage.GetProperty("revision").GetString();
        Overlays = Joined(triage.GetProperty("overlays"));
    }

    private static string Joined(JsonElement ids) => string.Join(' ', ids.EnumerateArray().Select(id => id.GetString()));

    private static string? Text(JsonElement id) => id.ValueKind switch
    {
        JsonValueKind.String => id.GetString(),
        JsonValueKind.Number => id.GetInt64().ToString(CultureInfo.InvariantCulture),
        _ => null,
    };
}
