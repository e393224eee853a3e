using AdviceService.Http;
using ModelContextProtocol;
using Serilog.Events;
using Serilog.Parsing;

namespace AdviceService.Tests.Http;

/// <summary>A failure inside the protocol's library is logged, and nothing of what the caller sent with it.</summary>
public class QuotingNobodyTests
{
    private const string Secret = "my-own-client";

    [Fact]
    public void Format_FailureInTheProtocol_NamesTypeStepAndPlaceAlone()
    {
        var line = Written(Event("ModelContextProtocol.Server.McpServer", Thrown(new InvalidOperationException($"quotes {Secret}"))));

        Assert.DoesNotContain(Secret, line, StringComparison.Ordinal);
        Assert.Contains("InvalidOperationException", line, StringComparison.Ordinal);
        Assert.Contains("request handler failed", line, StringComparison.Ordinal);
        Assert.Contains(nameof(Thrown), line, StringComparison.Ordinal);
    }

    [Fact]
    public void Format_LineOfOurs_IsLeftAsItIs() => Assert.Contains("\"Client\":\"my-own-client\"", Written(Event("AdviceService.Http.WarmUp", null)), StringComparison.Ordinal);

    [Theory]
    [InlineData("ModelContextProtocol.Server.McpServer", true)]
    [InlineData("AdviceService.Http.WarmUp", false)]
    public void IsCallersFault_WrongCall_OfTheProtocolAlone(string source, bool isCallers)
    {
        Assert.Equal(isCallers, QuotingNobody.IsCallersFault(Event(source, new McpException("There is no tool of that name."))));
        Assert.False(QuotingNobody.IsCallersFault(Event(source, new InvalidOperationException())));
    }

    private static string Written(LogEvent logEvent)
    {
        using var text = new StringWriter();
        new QuotingNobody().Format(logEvent, text);
        return text.ToString();
    }

    private static LogEvent Event(string source, Exception? exception) => new(
        DateTimeOffset.UnixEpoch, LogEventLevel.Error, exception, new MessageTemplateParser().Parse("{Client} request handler failed."),
        [new("SourceContext", new ScalarValue(source)), new("Client", new ScalarValue(Secret))]);

    private static InvalidOperationException Thrown(InvalidOperationException exception)
    {
        try
        {
            throw exception;
        }
        catch (InvalidOperationException caught)
        {
            return caught;
        }
    }
}
