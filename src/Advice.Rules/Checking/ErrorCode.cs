using System.Collections.Frozen;

namespace Advice.Rules.Checking;

/// <summary>The kinds of error in rule and case files, each with its page in docs/errors.</summary>
public static class ErrorCode
{
    /// <summary>Those that a file which cannot be read brings about in others: what it holds is missed there.</summary>
    internal static readonly FrozenSet<string> OfWhatIsMissed = new[] { UnknownId, Circle, FaultNotShown, FaultNotFound, StillNeeded }.ToFrozenSet(StringComparer.Ordinal);

    /// <summary>A file or folder cannot be read or would be left out.</summary>
    public const string FileNotRead = "file-not-read";

    /// <summary>The file is not well-formed YAML.</summary>
    public const string MalformedYaml = "malformed-yaml";

    /// <summary>YAML that is more than plain data: anchors, tags, several documents.</summary>
    public const string NotPlainData = "not-plain-data";

    /// <summary>A list, mapping, word or number stands where another is wanted.</summary>
    public const string WrongShape = "wrong-shape";

    /// <summary>There is no such kind of entry.</summary>
    public const string UnknownKind = "unknown-kind";

    /// <summary>The entry has no such member.</summary>
    public const string UnknownMember = "unknown-member";

    /// <summary>No entry has that id.</summary>
    public const string UnknownId = "unknown-id";

    /// <summary>The word is not one of a closed list.</summary>
    public const string UnknownWord = "unknown-word";

    /// <summary>The id is not written as ids of its kind are.</summary>
    public const string MalformedId = "malformed-id";

    /// <summary>Another entry has the id already.</summary>
    public const string IdTaken = "id-taken";

    /// <summary>A member must be there.</summary>
    public const string MissingMember = "missing-member";

    /// <summary>A value needs a source, or the source its document.</summary>
    public const string MissingSource = "missing-source";

    /// <summary>Exactly one of several members is wanted.</summary>
    public const string ChooseOne = "choose-one";

    /// <summary>A member does not go with the others.</summary>
    public const string UnfitMember = "unfit-member";

    /// <summary>A number is too small or too large, or a range upside down.</summary>
    public const string OutOfRange = "out-of-range";

    /// <summary>A list names nothing.</summary>
    public const string EmptyList = "empty-list";

    /// <summary>The same word stands twice.</summary>
    public const string RepeatedWord = "repeated-word";

    /// <summary>A condition or value changes nothing.</summary>
    public const string AsksNothing = "asks-nothing";

    /// <summary>A rule asks for something and for its absence.</summary>
    public const string ExcludesItself = "excludes-itself";

    /// <summary>A scale has not exactly one normal value and others.</summary>
    public const string UnfitScale = "unfit-scale";

    /// <summary>Units cannot be compared.</summary>
    public const string UnfitUnit = "unfit-unit";

    /// <summary>Shares do not add up to 1.</summary>
    public const string SharesNotWhole = "shares-not-whole";

    /// <summary>Something lies within, includes or implies itself.</summary>
    public const string Circle = "circle";

    /// <summary>Two symptoms have the same phrase.</summary>
    public const string SharedPhrase = "shared-phrase";

    /// <summary>No rule shows a fault.</summary>
    public const string FaultNotShown = "fault-not-shown";

    /// <summary>No check detects a fault where it exists.</summary>
    public const string FaultNotFound = "fault-not-found";

    /// <summary>Two rules say the same, which would count twice.</summary>
    public const string CountsTwice = "counts-twice";

    /// <summary>Two rules contradict each other.</summary>
    public const string Contradiction = "contradiction";

    /// <summary>No vehicle can bring the entry into play.</summary>
    public const string NeverApplies = "never-applies";

    /// <summary>Others name what an overlay switches off.</summary>
    public const string StillNeeded = "still-needed";

    /// <summary>A case expects nothing.</summary>
    public const string EmptyCase = "empty-case";

    /// <summary>The service would refuse the request of a case.</summary>
    public const string BadRequest = "bad-request";
}
