using ModelContextProtocol;
using Serilog.Events;
using Serilog.Formatting;
using Serilog.Formatting.Compact;
using Serilog.Parsing;

namespace AdviceService.Http;

/// <summary>Writes lines as compact JSON. Those of the protocol's library lose what a caller sent: they name the client and the tool as the caller
/// calls them, and the message of an exception may quote a request.</summary>
internal sealed class QuotingNobody : ITextFormatter
{
    private static readonly MessageTemplate Failed = new MessageTemplateParser().Parse("{Failure} at \"{Step}\": {Trace}");

    private readonly CompactJsonFormatter _json = new();

    /// <inheritdoc/>
    public void Format(LogEvent logEvent, TextWriter output) => _json.Format(IsOfTheProtocol(logEvent) ? Reduced(logEvent) : logEvent, output);

    /// <summary>Whether a line says no more than that a caller called wrongly, who was told so.</summary>
    public static bool IsCallersFault(LogEvent logEvent) => IsOfTheProtocol(logEvent) && logEvent.Exception is McpException or OperationCanceledException;

    private static bool IsOfTheProtocol(LogEvent logEvent) =>
        logEvent.Properties.GetValueOrDefault("SourceContext") is ScalarValue { Value: string source } && source.StartsWith("ModelContextProtocol", StringComparison.Ordinal);

    /// <summary>The template is a constant of the library; what was filled in is not.</summary>
    private static LogEvent Reduced(LogEvent full) => new(full.Timestamp, full.Level, null, Failed,
    [
        new("SourceContext", full.Properties["SourceContext"]),
        new("Failure", new ScalarValue(full.Exception?.GetType().Name)),
        new("Step", new ScalarValue(full.MessageTemplate.Text)),
        new("Trace", new ScalarValue(full.Exception?.StackTrace)),
    ]);
}
