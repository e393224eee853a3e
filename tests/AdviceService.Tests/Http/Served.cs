namespace AdviceService.Tests.Http;

[CollectionDefinition(ByHttp)]
public sealed class Served : ICollectionFixture<RunningService>
{
    public const string ByHttp = "served by HTTP";
}
