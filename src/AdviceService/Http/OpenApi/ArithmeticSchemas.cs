using System.Globalization;
using Advice.Arithmetic;
using Advice.Findings;
using AdviceService.Requests;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;
using Word = System.Text.Json.Nodes.JsonValue;

namespace AdviceService.Http.OpenApi;

/// <summary>Describes what each computation takes, from the same inputs that its reader reads.</summary>
internal sealed class ArithmeticSchemas : IDocumentFilter
{
    /// <inheritdoc/>
    public void Apply(OpenApiDocument swaggerDoc, DocumentFilterContext context)
    {
        foreach (var computation in Computations.All)
        {
            var operation = swaggerDoc.Paths[$"{ArithmeticRoutes.Path}/{computation.Name}"].Operations![HttpMethod.Post];
            operation.RequestBody = new OpenApiRequestBody
            {
                Required = true,
                Content = new Dictionary<string, IOpenApiMediaType> { ["application/json"] = new OpenApiMediaType { Schema = Body(computation) } },
            };
        }
    }

    private static OpenApiSchema Body(Computation computation) => Object(
        computation.Inputs.Where(input => input.IsRequired).Select(input => input.Name),
        [.. computation.Inputs.Select(input => (input.Name, Described(input)))]);

    /// <summary>An input with what it is.</summary>
    internal static OpenApiSchema Described(Input input)
    {
        var schema = Of(input);
        schema.Description = input switch
        {
            NumberInput { Unit: { } unit } number => string.Create(CultureInfo.InvariantCulture, $"{input.What}; {number.Least} … {number.Most} {unit}"),
            SeriesInput { Unit: { } unit } series => string.Create(CultureInfo.InvariantCulture, $"{input.What}; {series.Least} … {series.Most} {unit}"),
            _ => input.What,
        };
        return schema;
    }

    private static OpenApiSchema Of(Input input) => input switch
    {
        NumberInput { Unit: { } unit } => Object(["value", "unit"], ("value", Number()), ("unit", Words(UnitConversion.Accepted(unit)))),
        NumberInput number => Number(number.Least, number.Most),
        SeriesInput { Unit: { } unit } series => Object(
            ["values", "unit"], ("values", List(Number(), series.Fewest, series.MostValues)), ("unit", Words(UnitConversion.Accepted(unit)))),
        SeriesInput series => List(Number(series.Least, series.Most), series.Fewest, series.MostValues),
        PointsInput points => List(
            Object([points.X.Name, points.Y.Name], (points.X.Name, Described(points.X)), (points.Y.Name, Described(points.Y))), points.Fewest, points.MostPoints),
        WordInput word => Words(word.Words),
        TextInput text => new OpenApiSchema { Type = JsonSchemaType.String, MaxLength = InputValue.LongestText, Examples = [Word.Create(text.Example)] },
        _ => new OpenApiSchema { Type = JsonSchemaType.String, Format = "date" },
    };

    /// <summary>An object with these members and no others.</summary>
    internal static OpenApiSchema Object(IEnumerable<string> required, params (string Name, OpenApiSchema Schema)[] members) => new()
    {
        Type = JsonSchemaType.Object,
        AdditionalPropertiesAllowed = false,
        Required = required.ToHashSet(),
        Properties = members.ToDictionary(member => member.Name, IOpenApiSchema (member) => member.Schema),
    };

    private static OpenApiSchema Number(double? least = null, double? most = null) => new()
    {
        Type = JsonSchemaType.Number,
        Format = "double",
        Minimum = least?.ToString(CultureInfo.InvariantCulture),
        Maximum = most?.ToString(CultureInfo.InvariantCulture),
    };

    private static OpenApiSchema List(OpenApiSchema element, int fewest, int most) =>
        new() { Type = JsonSchemaType.Array, Items = element, MinItems = fewest, MaxItems = most };

    private static OpenApiSchema Words(IEnumerable<string> words) =>
        new() { Type = JsonSchemaType.String, Enum = [.. words.Select(word => Word.Create(word))] };
}
