using System.Text.Json.Nodes;
using AdviceService.Json;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.Swagger;

namespace AdviceService.Http.OpenApi;

/// <summary>The description of the interface, and the page to read and try it.</summary>
internal static class Documentation
{
    public static void AddAdviceDocumentation(this IServiceCollection services)
    {
        services.ConfigureHttpJsonOptions(json =>
        {
            json.SerializerOptions.TypeInfoResolver = Written.As;
            foreach (var converter in Written.As.Options.Converters)
                json.SerializerOptions.Converters.Add(converter);
        });
        services.AddEndpointsApiExplorer();
        services.Configure<SwaggerOptions>(options => options.OpenApiVersion = OpenApiSpecVersion.OpenApi3_1);
        services.AddSwaggerGen(options =>
        {
            options.SwaggerDoc("v1", new OpenApiInfo
            {
                Title = "AdviceService",
                Version = "v1",
                Description = "Vehicle-maintenance advice: what to inspect first, how, with which cautions and for which reason.",
            });
            options.AddServer(new OpenApiServer { Url = "/", Description = "This service" });
            options.SupportNonNullableReferenceTypes();
            options.MapType<JsonNode>(() => new OpenApiSchema());
            options.DocumentFilter<RequestSchemas>();
            options.DocumentFilter<ArithmeticSchemas>();
            options.SchemaFilter<AnswerSchemas>();
            foreach (var file in Directory.EnumerateFiles(AppContext.BaseDirectory, "Advice*.xml").Order(StringComparer.Ordinal))
                options.IncludeXmlComments(file);
        });
    }

    public static void UseAdviceDocumentation(this WebApplication app)
    {
        app.UseSwagger(options => options.RouteTemplate = "/openapi/{documentName}.json");
        app.UseSwaggerUI(options =>
        {
            options.RoutePrefix = "docs";
            options.SwaggerEndpoint("../openapi/v1.json", "AdviceService v1");
            options.DocumentTitle = "AdviceService";
        });
    }
}
