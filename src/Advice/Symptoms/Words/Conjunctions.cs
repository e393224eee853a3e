using System.Collections.Frozen;

namespace Advice.Symptoms.Words;

/// <summary>Words that open a clause where there is no comma.</summary>
internal static class Conjunctions
{
    private static readonly FrozenSet<string> Always =
        WordSet.Of("but however although though except because cuz whereas then");

    private static readonly FrozenSet<string> BeforeSubject = WordSet.Of("and or so plus also");

    private static readonly FrozenSet<string> Endings = WordSet.Of("dies die died stalls stall stalled stops stop stopped quits quit shuts cuts");

    private static readonly FrozenSet<string> Subjects = WordSet.Of(
        "after the my our your his her its it i im ive we you he she they this that these there theres thats hes shes theyre something when while if as a an then now sometimes one all");

    /// <summary>Whether a clause begins with this word: "and" joins two verbs unless a subject follows, and "starts then dies" is one thing.</summary>
    public static bool OpensClause(string word, string next) =>
        (Always.Contains(word) && !(word == "then" && Endings.Contains(next))) || (BeforeSubject.Contains(word) && Subjects.Contains(next));
}
