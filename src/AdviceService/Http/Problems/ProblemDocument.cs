using AdviceService.Requests;

namespace AdviceService.Http.Problems;

/// <summary>A problem in the form of RFC 9457, with everything that is wrong.</summary>
/// <param name="Type">What kind of problem; always about:blank, the status says it.</param>
/// <param name="Title">The kind in words.</param>
/// <param name="Status">HTTP status.</param>
/// <param name="Errors">What is wrong, at least one.</param>
public sealed record ProblemDocument(string Type, string Title, int Status, IReadOnlyList<RequestError> Errors)
{
    /// <summary>A problem of that status.</summary>
    public static ProblemDocument Of(int status, IReadOnlyList<RequestError> errors) => new("about:blank", TitleOf(status), status, errors);

    /// <summary>A problem of that status with one error that concerns the request as a whole.</summary>
    public static ProblemDocument Of(int status, string code, string detail) => Of(status, [new RequestError("", code, detail)]);

    private static string TitleOf(int status) => status switch
    {
        400 => "The request is malformed.",
        404 => "There is nothing at this address.",
        405 => "This address does not take that method.",
        408 => "The request came too slowly.",
        413 => "The request is too large.",
        415 => "The request has the wrong media type.",
        422 => "The request asks for something impossible or unknown.",
        503 => "The service is not ready.",
        < 500 => "The request cannot be answered.",
        _ => "The service failed.",
    };
}
