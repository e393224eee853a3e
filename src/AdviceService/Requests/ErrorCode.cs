namespace AdviceService.Requests;

/// <summary>The kinds of error in a request.</summary>
public static class ErrorCode
{
    /// <summary>400: the body is empty.</summary>
    public const string EmptyBody = "empty-body";

    /// <summary>400: the body is not UTF-8, or escapes half of a surrogate pair.</summary>
    public const string InvalidText = "invalid-text";

    /// <summary>400: the body is not JSON.</summary>
    public const string MalformedJson = "malformed-json";

    /// <summary>400: the body is nested too deep.</summary>
    public const string TooDeep = "too-deep";

    /// <summary>400: the object has no such member.</summary>
    public const string UnknownMember = "unknown-member";

    /// <summary>400: the member stands twice in its object.</summary>
    public const string DuplicateMember = "duplicate-member";

    /// <summary>400: the member must be there.</summary>
    public const string MissingMember = "missing-member";

    /// <summary>400: the member does not go with the others.</summary>
    public const string UnfitMember = "unfit-member";

    /// <summary>400: a value of another JSON type is wanted.</summary>
    public const string WrongType = "wrong-type";

    /// <summary>400: the word is none of a closed list.</summary>
    public const string UnknownWord = "unknown-word";

    /// <summary>400: no day of the calendar in the form yyyy-MM-dd.</summary>
    public const string InvalidDate = "invalid-date";

    /// <summary>400: the text holds the character U+0000.</summary>
    public const string NullCharacter = "null-character";

    /// <summary>422: the number or day is out of its range.</summary>
    public const string OutOfRange = "out-of-range";

    /// <summary>422: the text has too many characters.</summary>
    public const string TooLong = "too-long";

    /// <summary>422: the list has too many elements.</summary>
    public const string TooMany = "too-many";

    /// <summary>422: the list has too few elements.</summary>
    public const string TooFew = "too-few";

    /// <summary>422: the text has not the form that is wanted.</summary>
    public const string WrongForm = "wrong-form";

    /// <summary>422: the value is possible by itself but not with the others.</summary>
    public const string UnfitTogether = "unfit-together";

    /// <summary>422: the rule set has no such id.</summary>
    public const string UnknownId = "unknown-id";

    /// <summary>422: the text has not the form of a trouble code.</summary>
    public const string InvalidTroubleCode = "invalid-trouble-code";

    /// <summary>422: the check gives another kind of result, or another unit, or is not done there.</summary>
    public const string UnfitForCheck = "unfit-for-check";

    /// <summary>The list of errors was cut.</summary>
    public const string MoreErrors = "more-errors";
}
