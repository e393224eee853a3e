using Microsoft.Extensions.DependencyInjection;
using Microsoft.OpenApi;
using Swashbuckle.AspNetCore.Swagger;

namespace AdviceService.Tests.Http;

[Collection(Served.ByHttp)]
public class OpenApiDocumentTests(RunningService service)
{
    /// <summary>UPDATE_OPENAPI=1 writes the file anew.</summary>
    [Fact]
    public async Task CommittedDocument_IsTheGeneratedOne()
    {
        var file = InterfaceDescription.File;
        var generated = await service.Services.GetRequiredService<ISwaggerProvider>().GetSwagger("v1").SerializeAsJsonAsync(OpenApiSpecVersion.OpenApi3_1);
        if (Environment.GetEnvironmentVariable("UPDATE_OPENAPI") == "1")
            await File.WriteAllTextAsync(file, generated + "\n");

        Assert.Equal(generated + "\n", await File.ReadAllTextAsync(file));
    }
}
