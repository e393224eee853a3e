namespace AdviceService.Requests;

/// <summary>All that was found wrong so far: a caller gets the whole list at once.</summary>
internal sealed class ErrorList
{
    /// <summary>The most errors that are listed.</summary>
    public const int Most = 100;

    private readonly List<RequestError> _errors = [];
    private bool _badShape;

    /// <summary>Notes an error of syntax, type or shape.</summary>
    public void BadShape(JsonPointer at, string code, string detail) => Add(at, code, () => detail, badShape: true);

    /// <summary>Notes the same with a detail that is made only if it is listed.</summary>
    public void BadShape(JsonPointer at, string code, Func<string> detail) => Add(at, code, detail, badShape: true);

    /// <summary>Notes a value out of its range.</summary>
    public void BadValue(JsonPointer at, string code, string detail) => Add(at, code, () => detail, badShape: false);

    /// <summary>Notes the same with a detail that is made only if it is listed.</summary>
    public void BadValue(JsonPointer at, string code, Func<string> detail) => Add(at, code, detail, badShape: false);

    /// <summary>The value if nothing is wrong, else the errors.</summary>
    public ReadResult<T> Result<T>(T? value)
        where T : class =>
        _errors.Count == 0
            ? new ReadResult<T>(value, [], StatusCodes.Status200OK)
            : new ReadResult<T>(null, _errors, _badShape ? StatusCodes.Status400BadRequest : StatusCodes.Status422UnprocessableEntity);

    private void Add(JsonPointer at, string code, Func<string> detail, bool badShape)
    {
        _badShape |= badShape;
        if (_errors.Count < Most)
            _errors.Add(new RequestError(at.ToString(), code, detail()));
        else
            _errors[^1] = new RequestError("", ErrorCode.MoreErrors, $"There are more errors than these {Most - 1}.");
    }
}
