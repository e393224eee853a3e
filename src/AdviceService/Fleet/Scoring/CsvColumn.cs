using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Advice.Documents.Requests;
using Advice.Knowledge.Words;

namespace AdviceService.Fleet.Scoring;

/// <summary>A column of a fleet that lives in a spreadsheet: a member of a request by its path, such as vehicle.modelYear. Only what is one
/// value in a request can be a column; trouble codes and symptoms stand in one cell each, apart by spaces.</summary>
/// <param name="Path">Its name.</param>
/// <param name="Type">What its cells hold.</param>
internal sealed record CsvColumn(string Path, Type Type)
{
    private const string Id = "id";
    private const string TroubleCodes = "troubleCodes";
    private const string Symptoms = "symptoms";
    private static readonly char[] OtherSeparators = [';', '\t', '|'];

    private static readonly IReadOnlyDictionary<string, CsvColumn> Known = Members(typeof(AdviceRequest), "")
        .Prepend(new CsvColumn(Id, typeof(string))).Append(new CsvColumn(TroubleCodes, typeof(string))).Append(new CsvColumn(Symptoms, typeof(string)))
        .ToDictionary(column => column.Path, StringComparer.Ordinal);

    /// <summary>The names of all columns.</summary>
    public static IEnumerable<string> Names => Known.Keys;

    /// <summary>The columns of a header.</summary>
    /// <exception cref="ScoreException">It names one that is not known, or one twice, or is not parted by commas.</exception>
    public static IReadOnlyList<CsvColumn> Of(IReadOnlyList<string> header)
    {
        if (header is [var all] && all.IndexOfAny(OtherSeparators) is >= 0 and var at)
            throw new ScoreException($"The columns are parted by {(all[at] == '\t' ? "tabs" : $"'{all[at]}'")}; a table that is read here has commas (RFC 4180).");
        if (header.GroupBy(name => name, StringComparer.Ordinal).FirstOrDefault(group => group.Count() > 1) is { } twice)
            throw new ScoreException($"The header names the column '{twice.Key}' twice.");
        return [.. header.Select(name => Known.GetValueOrDefault(name) ?? throw new ScoreException(
            $"The header names a column '{name}' that is not known{(NearestWord.To(name, Names) is { } near ? $"; did you mean '{near}'?" : $". Columns are: {string.Join(", ", Names)}.")}"))];
    }

    /// <summary>Puts a cell into the request of its row. What does not fit the column stays text, for the reader of requests to refuse.</summary>
    public void Put(JsonObject request, string cell)
    {
        var (parent, names) = (request, Path.Split('.'));
        foreach (var name in names[..^1])
            parent = (JsonObject)(parent[name] ??= new JsonObject());
        parent[names[^1]] = Path switch
        {
            TroubleCodes => new JsonArray([.. Words(cell).Select(code => (JsonNode)code)]),
            Symptoms => new JsonArray([.. Words(cell).Select(symptom => new JsonObject { ["symptom"] = symptom })]),
            _ => Value(cell),
        };
    }

    private JsonNode Value(string cell) =>
        (Type == typeof(int) || Type == typeof(double)) && double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) ? number
        : Type == typeof(bool) && bool.TryParse(cell, out var truth) ? truth
        : cell;

    private static string[] Words(string cell) => cell.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static IEnumerable<CsvColumn> Members(Type type, string path) => type.GetProperties().SelectMany(property =>
    {
        var name = path + JsonNamingPolicy.CamelCase.ConvertName(property.Name);
        var value = Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType;
        return value == typeof(string) || value.IsValueType ? [new CsvColumn(name, value)]
            : value.Namespace == typeof(AdviceRequest).Namespace ? Members(value, name + ".")
            : [];
    });
}
