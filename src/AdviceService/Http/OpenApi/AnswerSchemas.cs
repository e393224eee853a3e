using System.Reflection;
using System.Text.Json;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace AdviceService.Http.OpenApi;

/// <summary>Answers may get new members: a client that refuses those would break with each of them. Every member is always there, some as
/// null.</summary>
internal sealed class AnswerSchemas : ISchemaFilter
{
    /// <inheritdoc/>
    public void Apply(IOpenApiSchema schema, SchemaFilterContext context)
    {
        if (schema is not OpenApiSchema { Properties: { Count: > 0 } properties } own
            || RequestTypes.Strict.Contains(context.Type) || RequestTypes.OfVehicle.Contains(context.Type))
            return;
        own.AdditionalPropertiesAllowed = true;
        own.Required = properties.Keys.ToHashSet();
        var nullability = new NullabilityInfoContext();
        foreach (var property in context.Type.GetProperties())
        {
            var name = JsonNamingPolicy.CamelCase.ConvertName(property.Name);
            if (properties.TryGetValue(name, out var member) && member is OpenApiSchemaReference reference
                && nullability.Create(property).ReadState == NullabilityState.Nullable)
                properties[name] = new OpenApiSchema { Description = reference.Description, OneOf = [reference, new OpenApiSchema { Type = JsonSchemaType.Null }] };
        }
    }
}
