namespace Advice.Intake;

/// <summary>A trouble code as a control unit stored it.</summary>
/// <param name="Code">The code, such as P0301.</param>
/// <param name="FailureType">Its failure type byte as two hexadecimal digits, such as 1A (SAE J2012, ISO 15031-6); null where none was given.</param>
public sealed record StoredCode(string Code, string? FailureType)
{
    private const char Separator = '-';

    /// <summary>The codes of a list such as P0301, P0420-1A, in order; one without failure type adds nothing beside the same code with one.</summary>
    public static IReadOnlyList<StoredCode> Of(IEnumerable<string> written)
    {
        var all = written.Distinct().Order(StringComparer.Ordinal).Select(Of).ToList();
        return [.. all.Where(one => one.FailureType is not null || all.TrueForAll(other => other.Code != one.Code || other.FailureType is null))];
    }

    private static StoredCode Of(string written) =>
        written.Split(Separator) is [var code, var type] ? new StoredCode(code, type) : new StoredCode(written, null);
}
