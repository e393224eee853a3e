using System.Globalization;
using Advice.Documents;
using Advice.Documents.Requests;
using Advice.Intake;
using Advice.Knowledge.Limits;

namespace Advice.Rules.Tests.Judging;

/// <summary>A row of published-limits.tsv: a value at or just beyond a published limit, and the class that follows from it.</summary>
internal sealed record Published(FindingReport Finding, string? Jurisdiction, VehicleDescription Vehicle, Deficiency Class, string Source)
{
    private static readonly DateOnly Today = new(2026, 3, 1);
    private static readonly string File = Path.Combine(RepositoryRules.Directory, "..", "tests", "Advice.Rules.Tests", "Judging", "published-limits.tsv");

    /// <summary>All rows, as they stand in the file.</summary>
    public static IReadOnlyList<string> Rows { get; } = [.. System.IO.File.ReadAllLines(File).Skip(1)];

    /// <summary>Reads a row.</summary>
    public static Published Read(string row)
    {
        var cells = row.Split('\t');
        var (check, value, unit) = (cells[0], cells[1], Or(cells[2]));
        return new Published(
            new FindingReport
            {
                Check = check,
                Position = Or(cells[3]),
                Value = unit is null ? null : Number(value),
                Unit = unit,
                Observation = unit is null ? value : null,
            },
            Or(cells[4]), cells[5].Split(';', StringSplitOptions.RemoveEmptyEntries).Aggregate(new VehicleDescription(), With), Enum.Parse<Deficiency>(cells[6], true), cells[7]);
    }

    /// <summary>Its vehicle under its law.</summary>
    public Case Case => new() { AsOf = Today, Vehicle = VehicleReader.Read(Vehicle, Today), Jurisdiction = Jurisdiction };

    private static VehicleDescription With(VehicleDescription vehicle, string fact) => fact.Split('=') switch
    {
        ["wheelDiameter", var diameter] => vehicle with { Steering = new SteeringDescription { WheelDiameter = new Quantity { Value = Number(diameter.Split(' ')[0]), Unit = diameter.Split(' ')[1] } } },
        ["driveline", var driveline] => vehicle with { Driveline = driveline },
        ["fuel", var fuel] => vehicle with { Fuel = fuel },
        ["modelYear", var year] => vehicle with { ModelYear = (int)Number(year) },
        _ => throw new FormatException(fact),
    };

    private static string? Or(string cell) => cell.Length == 0 ? null : cell;

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
