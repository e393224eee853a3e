namespace AdviceService.Requests;

/// <summary>What came of reading a request: a value, or at least one error.</summary>
/// <param name="Value">The request; null where there are errors.</param>
/// <param name="Errors">All that is wrong, at most <see cref="ErrorList.Most"/> entries.</param>
/// <param name="Status">200; 400 where syntax, a type or the shape is wrong; 422 where only ranges and ids are.</param>
public sealed record ReadResult<T>(T? Value, IReadOnlyList<RequestError> Errors, int Status)
    where T : class;
