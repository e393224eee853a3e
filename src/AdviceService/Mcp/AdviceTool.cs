using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using AdviceService.Http;
using AdviceService.Requests;

namespace AdviceService.Mcp;

/// <summary>A tool that a chat host may call: a route by another way, with the same reader of requests and the same answer.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Title">Its name for people.</param>
/// <param name="Description">When to call it, for the model.</param>
/// <param name="Operation">The operation of the interface whose schemas it has.</param>
/// <param name="Call">Answers arguments that are UTF-8 JSON.</param>
internal sealed record AdviceTool(string Name, string Title, string Description, string Operation, Func<AdviceDesk, ReadOnlyMemory<byte>, ToolAnswer> Call)
{
    /// <summary>A tool that gives a document.</summary>
    public static AdviceTool Of<T>(
        string name, string title, string description, string operation, Func<AdviceDesk, ReadOnlyMemory<byte>, ReadResult<T>> call, JsonTypeInfo<T> type)
        where T : class => new(name, title, description, operation, (desk, arguments) =>
    {
        var result = call(desk, arguments);
        return new ToolAnswer(result.Value is { } document ? JsonSerializer.SerializeToElement(document, type) : null, result.Errors);
    });
}
