using System.Text.Json;
using System.Threading.Tasks.Dataflow;
using AdviceService.Http;
using AdviceService.Http.Problems;
using AdviceService.Json;
using AdviceService.Requests;

namespace AdviceService.Fleet;

/// <summary>From line to reply: the same line gives the same bytes, whoever asks and whatever stands in the other lines.</summary>
/// <param name="desk">The rule set at work.</param>
/// <param name="detail">How much is answered.</param>
/// <param name="failed">Is told of our own faults; the line gets a problem and the others go on.</param>
internal sealed class LineAnswers(AdviceDesk desk, LineDetail detail, Action<Exception> failed)
{
    private const int WaitingForEach = 16;

    private static readonly ProblemDocument TooLong = ProblemDocument.Of(400, "too-long", $"A line may have {NdjsonLines.LongestLine / 1024} KiB.");

    private static readonly ProblemDocument Fault = ProblemDocument.Of(500, "internal", "The fault is ours and has been logged; the same line will fail again until it is mended.");

    /// <summary>Tells whoever reads standard error of our own faults.</summary>
    public static void OnStandardError(Exception fault) => Console.Error.WriteLine($"{fault.GetType().Name} while answering a line: {fault.StackTrace}");

    /// <summary>Answers many lines at once and gives the replies in the order of the lines. It holds few of them: whoever feeds it waits.</summary>
    /// <param name="atOnce">How many lines are worked on at once.</param>
    /// <param name="cancel">Drops what has not been answered.</param>
    public TransformBlock<NumberedLine, LineReply> InOrder(int atOnce, CancellationToken cancel) => new(
        Answer,
        new ExecutionDataflowBlockOptions
        {
            MaxDegreeOfParallelism = atOnce,
            BoundedCapacity = atOnce * WaitingForEach,
            EnsureOrdered = true,
            CancellationToken = cancel,
        });

    private LineReply Answer(NumberedLine line)
    {
        try
        {
            return line.Json is { } json ? Answer(line.Number, json) : Problem(null, line.Number, TooLong);
        }
        catch (Exception fault)
        {
            failed(fault);
            return Problem(null, line.Number, Fault);
        }
    }

    private LineReply Answer(int number, byte[] json)
    {
        if (detail == LineDetail.Full)
        {
            var (id, answer) = desk.AnswerLine(json);
            return answer.Value is { } advice
                ? new LineReply(JsonSerializer.SerializeToUtf8Bytes(new AnswerLine(id, number, advice), Written.As.AnswerLine), advice, null)
                : Problem(id, number, answer);
        }

        var (given, figures) = desk.TriageLine(json);
        return figures.Value is { } triage
            ? new LineReply(JsonSerializer.SerializeToUtf8Bytes(new TriageLine(given, number, triage), Written.As.TriageLine), null, triage)
            : Problem(given, number, figures);
    }

    private static LineReply Problem<T>(JsonElement? id, int number, ReadResult<T> result)
        where T : class => Problem(id, number, ProblemDocument.Of(result.Status, result.Errors));

    private static LineReply Problem(JsonElement? id, int number, ProblemDocument problem) =>
        new(JsonSerializer.SerializeToUtf8Bytes(new ProblemLine(id, number, problem), Written.As.ProblemLine), null, null);
}
