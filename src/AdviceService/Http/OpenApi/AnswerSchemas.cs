using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace AdviceService.Http.OpenApi;

/// <summary>Answers may get new members: a client that refuses those would break with each of them. And every member is always there.</summary>
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
    }
}
