using System.Collections.Frozen;

namespace Advice.Rules.Checking;

/// <summary>The kinds of warning about rule files, each with its page in docs/errors.</summary>
public static class WarningCode
{
    /// <summary>Another rule or limit applies wherever this one does and says as much.</summary>
    public const string SwallowedRule = "swallowed-rule";

    /// <summary>Another rule, limit or case says the same.</summary>
    public const string SaysAgain = "says-again";

    /// <summary>A rule excludes what is certain wherever it applies.</summary>
    public const string ExcludesImplied = "excludes-implied";

    /// <summary>On some vehicles that can have a fault no check finds it.</summary>
    public const string NotFoundEverywhere = "not-found-everywhere";

    /// <summary>Only a drive finds a fault with which one may not drive.</summary>
    public const string OnlyByDriving = "only-by-driving";

    /// <summary>Only reading trouble codes finds a fault.</summary>
    public const string OnlyByCodes = "only-by-codes";

    /// <summary>A check cannot find what it is said to find.</summary>
    public const string CannotFind = "cannot-find";

    /// <summary>A method calls for a set-up or caution that the check does not name.</summary>
    public const string MissingCaution = "missing-caution";

    /// <summary>A reason only repeats names.</summary>
    public const string EmptyReason = "empty-reason";

    /// <summary>Nothing uses an entry.</summary>
    public const string Unused = "unused";

    /// <summary>A service is never due unless the duty is stated.</summary>
    public const string NeverDue = "never-due";

    /// <summary>So little of a phrase counts that harmless texts hold it.</summary>
    public const string ThinPhrase = "thin-phrase";

    /// <summary>An overlay changes or takes away what protects people.</summary>
    public const string CautionChanged = "caution-changed";

    /// <summary>All of them.</summary>
    public static readonly FrozenSet<string> All =
    [
        SwallowedRule, SaysAgain, ExcludesImplied, NotFoundEverywhere, OnlyByDriving, OnlyByCodes, CannotFind, MissingCaution, EmptyReason, Unused, NeverDue,
        ThinPhrase, CautionChanged,
    ];
}
