using System.Globalization;
using Advice.Knowledge.Limits;
using Advice.Vehicles;

namespace Advice.Rules.Tests.Published;

/// <summary>A value that just passes and one that just fails, written down from the source named with them and not from the rules.</summary>
internal sealed record CheckValue(
    string Check, string? Position, Vehicle Vehicle, string? Jurisdiction, string Unit, double Good, double Bad, Deficiency Class, string Source)
{
    /// <summary>The rows of limits.csv, read by their line.</summary>
    public static IReadOnlyList<string> Lines { get; } =
        [.. File.ReadLines(Path.Combine(RepositoryRules.Directory, "..", "tests", "Advice.Rules.Tests", "Published", "limits.csv")).Skip(1)];

    public static CheckValue Read(string line)
    {
        var cells = line.Split(';');
        return new CheckValue(
            cells[0], Stated(cells[1]), VehicleOf(cells[2]), Stated(cells[3]), cells[4], Number(cells[5]), Number(cells[6]),
            Enum.Parse<Deficiency>(cells[7], ignoreCase: true), cells[8]);
    }

    private static Vehicle VehicleOf(string facts)
    {
        var stated = facts.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(fact => fact.Split('=')).ToLookup(fact => double.TryParse(fact[1], CultureInfo.InvariantCulture, out _));
        return new Vehicle(stated[false].ToDictionary(fact => fact[0], fact => fact[1]), stated[true].ToDictionary(fact => fact[0], fact => Number(fact[1])));
    }

    private static string? Stated(string cell) => cell.Length == 0 ? null : cell;

    private static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);
}
