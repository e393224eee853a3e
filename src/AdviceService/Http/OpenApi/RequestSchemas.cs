using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.SwaggerGen;

namespace AdviceService.Http.OpenApi;

/// <summary>What a request may hold and no more: unknown members are refused.</summary>
internal sealed class RequestSchemas : ISchemaFilter
{
    /// <inheritdoc/>
    public void Apply(IOpenApiSchema schema, SchemaFilterContext context)
    {
        if (schema is OpenApiSchema own && IsRequest(context.Type))
            own.AdditionalPropertiesAllowed = false;
    }

    private static bool IsRequest(Type type) =>
        type.Name.EndsWith("Request", StringComparison.Ordinal) || type.Name.EndsWith("Description", StringComparison.Ordinal)
        || type.Name.EndsWith("Report", StringComparison.Ordinal) || type.Name is "Quantity" or "SuppliedLimit";
}
