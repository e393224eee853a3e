using Docker.DotNet.Models;
using DotNet.Testcontainers.Builders;
using DotNet.Testcontainers.Containers;
using DotNet.Testcontainers.Images;

namespace Container;

/// <summary>
/// The image of the service, built once from the Dockerfile. Without a container engine, or without the base images named in
/// SDK_IMAGE and RUNTIME_IMAGE, the tests skip; REQUIRE_CONTAINERS=1 makes them fail instead.
/// </summary>
public sealed class ServiceImage : IAsyncLifetime
{
    private const ushort Port = 8080;
    private IFutureDockerImage? image;
    private string? missing;

    /// <inheritdoc/>
    public async Task InitializeAsync()
    {
        if (Setting("SDK_IMAGE") is not { } sdk || Setting("RUNTIME_IMAGE") is not { } runtime)
        {
            missing = "SDK_IMAGE and RUNTIME_IMAGE name no base images";
            return;
        }
        try
        {
            image = new ImageFromDockerfileBuilder()
                .WithDockerfileDirectory(CommonDirectoryPath.GetSolutionDirectory(), string.Empty)
                .WithBuildArgument("SDK_IMAGE", sdk)
                .WithBuildArgument("RUNTIME_IMAGE", runtime)
                .Build();
        }
        catch (DockerUnavailableException unavailable)
        {
            missing = "no container engine answers: " + unavailable.Message;
            return;
        }
        await image.CreateAsync();
    }

    /// <inheritdoc/>
    public Task DisposeAsync() => image?.DeleteAsync() ?? Task.CompletedTask;

    /// <summary>Starts a container with as few rights as an operator can give it, and waits until it is ready.</summary>
    /// <param name="options">Options added to the command line of the service.</param>
    public async Task<IContainer> StartAsync(params string[] options)
    {
        if (missing is not null && Setting("REQUIRE_CONTAINERS") == "1")
            Assert.Fail(missing);
        Skip.If(missing is not null, missing);
        var container = new ContainerBuilder(image!)
            .WithCommand(options)
            .WithPortBinding(Port, assignRandomHostPort: true)
            .WithCreateParameterModifier(Restrict)
            .WithWaitStrategy(Wait.ForUnixContainer().UntilHttpRequestIsSucceeded(
                request => request.ForPort(Port).ForPath("/health/ready"),
                wait => wait.WithTimeout(TimeSpan.FromMinutes(2))))
            .Build();
        await container.StartAsync();
        return container;
    }

    /// <summary>A client of the started service.</summary>
    public static HttpClient Client(IContainer container) =>
        new() { BaseAddress = new UriBuilder(Uri.UriSchemeHttp, container.Hostname, container.GetMappedPublicPort(Port)).Uri };

    private static void Restrict(CreateContainerParameters parameters)
    {
        // After this time the engine kills, and the exit code is no longer that of the service.
        parameters.StopTimeout = TimeSpan.FromSeconds(30);
        var host = parameters.HostConfig!;
        host.ReadonlyRootfs = true;
        host.CapDrop = ["ALL"];
        host.SecurityOpt = ["no-new-privileges"];
        host.Memory = 512L << 20;
        foreach (var binding in host.PortBindings.Values.SelectMany(bindings => bindings))
            binding.HostIP = "127.0.0.1";
    }

    private static string? Setting(string name) =>
        Environment.GetEnvironmentVariable(name) is { Length: > 0 } value ? value : null;
}
