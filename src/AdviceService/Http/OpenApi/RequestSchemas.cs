using System.Globalization;
using System.Text.Json.Nodes;
using Advice.Documents.Requests;
using Advice.Evidence;
using Advice.Findings;
using Advice.FreezeFrames;
using AdviceService.Catalogues;
using AdviceService.Requests;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;
using Word = System.Text.Json.Nodes.JsonValue;

namespace AdviceService.Http.OpenApi;

/// <summary>Makes the schemas of requests say what the reader of requests accepts: no unknown members, closed lists of words, bounds.</summary>
internal sealed class RequestSchemas(IRuleBook rules) : IDocumentFilter
{
    private readonly VehicleWords _words = new(rules.Catalogue);

    /// <inheritdoc/>
    public void Apply(OpenApiDocument swaggerDoc, DocumentFilterContext context)
    {
        var schemas = context.SchemaRepository.Schemas;
        foreach (var type in RequestTypes.Strict.Concat(RequestTypes.OfVehicle))
            Own(schemas[type.Name]).AdditionalPropertiesAllowed = false;
        foreach (var property in RequestTypes.Strict.SelectMany(type => schemas[type.Name].Properties!.Values).OfType<OpenApiSchema>())
            property.Type &= ~JsonSchemaType.Null;
        Bound(schemas);
        Join(schemas);
        Quantities(schemas);
        foreach (var type in RequestTypes.OfVehicle)
            AllowUnknown(Own(schemas[type.Name]).Properties!);
    }

    private void Bound(Dictionary<string, IOpenApiSchema> schemas)
    {
        BoundRequest(Member<AdviceRequest>);
        BoundRequest(Member<WhyNotQuestion>);
        Words(Member<ProjectionRequest>("jurisdiction"), [.. rules.Catalogue.Jurisdictions.Keys.Order(StringComparer.Ordinal)]);
        (Member<ProjectionRequest>("measurements").MinItems, Member<ProjectionRequest>("measurements").MaxItems) = (1, ProjectionPart.MostMeasurements);
        BoundRequest(Member<InspectionRequest>);
        Range(Member<InspectionRequest>("limit"), 1, InspectionRequest.MostSteps);
        Member<SuppliedInterval>("years").Minimum = IntervalPart.LeastYears.ToString(CultureInfo.InvariantCulture);
        Member<SuppliedInterval>("years").Maximum = IntervalPart.MostYears.ToString(CultureInfo.InvariantCulture);
        Member<IntakeRequest>("text").MaxLength = AdvicePart.LongestComplaint;
        Member<IntakeRequest>("complaint").MaxLength = AdvicePart.LongestComplaint;
        Member<IntakeRequest>("unsure").MaxItems = AdvicePart.MostSymptoms;
        Member<IntakeRequest>("troubleCodes").MaxItems = AdvicePart.MostCodes;
        Member<IntakeRequest>("findings").MaxItems = AdvicePart.MostFindings;
        Words(Member<IntakeRequest>("jurisdiction"), [.. rules.Catalogue.Jurisdictions.Keys.Order(StringComparer.Ordinal)]);
        Member<SymptomReport>("occasions").MaxItems = SymptomPart.MostOccasions;
        Member<SuppliedLimit>("source").MaxLength = SuppliedLimitPart.LongestSource;
        Member<CatalogueQuery>("words").MaxLength = CatalogueQueryPart.LongestWords;
        Words(Member<CatalogueQuery>("kind"), CatalogueSearch.Kinds);
        Range(Member<CatalogueQuery>("limit"), 1, CatalogueQueryPart.MostEntries);
        Range(Member<WorkshopDescription>("minutes"), 1, WorkshopPart.MinutesOfADay);
        Words(Member<WorkshopDescription>("audience"), WorkshopPart.Audiences);
        Range(Member<VehicleDescription>("modelYear"), VehiclePart.EarliestYear, null);
        Range(Member<EngineDescription>("cylinders"), 1, VehiclePart.MostCylinders);
        Words(Member<VehicleDescription>("body"), _words.Body);
        Words(Member<VehicleDescription>("driveline"), _words.Driveline);
        Words(Member<VehicleDescription>("transmission"), _words.Transmission);
        Words(Member<VehicleDescription>("fuel"), _words.Fuel);
        Words(Member<VehicleDescription>("rearAxle"), _words.RearAxle);
        Words(Member<VehicleDescription>("duty"), _words.Duty);
        Words(Own(Member<VehicleDescription>("severeUse").Items!), _words.SevereUse);
        Member<VehicleDescription>("severeUse").MaxItems = _words.SevereUse.Count;
        Words(Member<EngineDescription>("timingDrive"), _words.TimingDrive);
        Words(Member<EngineDescription>("ignition"), _words.Ignition);
        Words(Member<SteeringDescription>("assist"), _words.SteeringAssist);
        Words(Member<BrakesDescription>("front"), _words.FrontBrakes);
        Words(Member<BrakesDescription>("rear"), _words.RearBrakes);
        Words(Member<BrakesDescription>("parking"), _words.ParkingBrake);
        Words(Member<BrakesDescription>("fluid"), _words.BrakeFluid);

        OpenApiSchema Member<T>(string name) => Own(schemas[typeof(T).Name].Properties![name]);
    }

    private void BoundRequest(Func<string, OpenApiSchema> member)
    {
        member("complaint").MaxLength = AdvicePart.LongestComplaint;
        member("symptoms").MaxItems = AdvicePart.MostSymptoms;
        member("unsure").MaxItems = AdvicePart.MostSymptoms;
        member("troubleCodes").MaxItems = AdvicePart.MostCodes;
        member("findings").MaxItems = AdvicePart.MostFindings;
        member("services").MaxItems = AdvicePart.MostServices;
        Range(member("limit"), 1, 50);
        Words(member("jurisdiction"), [.. rules.Catalogue.Jurisdictions.Keys.Order(StringComparer.Ordinal)]);
    }

    /// <summary>Which members go with which.</summary>
    private static void Join(Dictionary<string, IOpenApiSchema> schemas)
    {
        Own(schemas[nameof(FindingReport)]).OneOf =
        [
            new OpenApiSchema { Required = Names("value", "unit"), Not = Requires("observation") },
            new OpenApiSchema { Required = Names("observation"), Not = new OpenApiSchema { AnyOf = [Requires("value"), Requires("unit")] } },
        ];
        Own(schemas[nameof(WhyNotQuestion)]).OneOf = [Requires("fault"), Requires("check")];
        Own(schemas[nameof(SuppliedInterval)]).AnyOf = [Requires("distance"), Requires("years")];
        Own(schemas[nameof(IntakeRequest)]).Not = new OpenApiSchema { Required = Names("text", "complaint") };
        Own(schemas[nameof(SuppliedLimit)]).AnyOf = [Requires("minimum"), Requires("maximum")];
    }

    /// <summary>Each quantity has units of its own.</summary>
    private void Quantities(Dictionary<string, IOpenApiSchema> schemas)
    {
        var (odometer, diameter) = (QuantityPart.Odometer.Units, QuantityPart.WheelDiameter.Units);
        Replace(nameof(FindingReport), "odometer", Quantity(odometer));
        Replace(nameof(MeasurementReport), "odometer", Quantity(odometer));
        Replace(nameof(ProjectionRequest), "gaugeError", Quantity([.. UnitConversion.Known]));
        Replace(nameof(ServiceReport), "odometer", Quantity(odometer));
        Replace(nameof(SuppliedInterval), "distance", Quantity(odometer));
        Replace(nameof(VehicleDescription), "odometer", new OpenApiSchema { AnyOf = [Quantity(odometer), UnknownQuantity(odometer)] });
        Replace(nameof(SteeringDescription), "wheelDiameter", new OpenApiSchema { AnyOf = [Quantity(diameter), UnknownQuantity(diameter)] });
        schemas.Remove(nameof(Advice.Documents.Quantity));
        Replace(nameof(FindingReport), "with", Inputs());
        schemas.Remove(nameof(Advice.Arithmetic.Given));
        schemas["FreezeFrame"] = Frame();
        foreach (var type in new[] { nameof(AdviceRequest), nameof(WhyNotQuestion), nameof(InspectionRequest), nameof(IntakeRequest) })
            Own(schemas[type]).Properties!["freezeFrame"] = new OpenApiSchemaReference("FreezeFrame");

        void Replace(string type, string name, OpenApiSchema schema)
        {
            var properties = Own(schemas[type]).Properties!;
            schema.Description = properties[name].Description;
            properties[name] = schema;
        }
    }

    private static OpenApiSchema Quantity(IReadOnlyList<string> units) => new()
    {
        Type = JsonSchemaType.Object,
        Required = Names("value", "unit"),
        AdditionalPropertiesAllowed = false,
        Properties = new Dictionary<string, IOpenApiSchema>
        {
            ["value"] = new OpenApiSchema { Type = JsonSchemaType.Number, Format = "double" },
            ["unit"] = new OpenApiSchema { Type = JsonSchemaType.String, Enum = [.. units.Select(unit => Word.Create(unit))] },
        },
    };

    private static OpenApiSchema UnknownQuantity(IReadOnlyList<string> units) => new()
    {
        Type = JsonSchemaType.Object,
        AdditionalPropertiesAllowed = false,
        Properties = new Dictionary<string, IOpenApiSchema>
        {
            ["value"] = new OpenApiSchema { Enum = Unknown() },
            ["unit"] = new OpenApiSchema { Enum = [.. units.Select(unit => Word.Create(unit)), .. Unknown()] },
        },
    };

    /// <summary>Everything that a finding of any check may carry; where two computations bound an input differently, either may be meant.</summary>
    private OpenApiSchema Inputs() => new()
    {
        Type = JsonSchemaType.Object,
        AdditionalPropertiesAllowed = false,
        Properties = rules.Catalogue.Checks.Values.SelectMany(FindingInputs.Of).Distinct().GroupBy(input => input.Name).OrderBy(inputs => inputs.Key, StringComparer.Ordinal)
            .ToDictionary(inputs => inputs.Key, IOpenApiSchema (inputs) => inputs.Select(ArithmeticSchemas.Described).ToList() is [var only] ? only
                : new OpenApiSchema { AnyOf = [.. inputs.OrderBy(input => input.What, StringComparer.Ordinal).Select(ArithmeticSchemas.Described)] }),
    };

    private static OpenApiSchema Frame()
    {
        var frame = ArithmeticSchemas.Object([], [.. FrameInputs.All.Select(member => (member.Name, ArithmeticSchemas.Described(member)))]);
        frame.MinProperties = 1;
        frame.Description = "The values that the engine control stored with a trouble code. Where a check says so, they count as findings, unless there is one of that check.";
        return frame;
    }

    private static OpenApiSchema Requires(string name) => new() { Required = Names(name) };

    private static HashSet<string> Names(params string[] names) => [.. names];

    private static List<JsonNode> Unknown() => [Word.Create("unknown"), JsonNullSentinel.JsonNull];

    /// <summary>Of a vehicle, null and "unknown" say the same as an absent member.</summary>
    private static void AllowUnknown(IDictionary<string, IOpenApiSchema> properties)
    {
        foreach (var (name, schema) in properties.ToList())
        {
            if (schema is OpenApiSchema own)
                own.Type &= ~JsonSchemaType.Null;
            properties[name] = new OpenApiSchema
            {
                Description = schema.Description,
                AnyOf = [schema, new OpenApiSchema { Enum = Unknown() }],
            };
        }
    }

    private static void Range(OpenApiSchema schema, int least, int? most)
    {
        schema.Minimum = $"{least}";
        schema.Maximum = most is { } bound ? $"{bound}" : null;
    }

    private static void Words(OpenApiSchema schema, IReadOnlyList<string> words) => schema.Enum = [.. words.Select(word => Word.Create(word))];

    private static OpenApiSchema Own(IOpenApiSchema schema) => (OpenApiSchema)schema;
}
