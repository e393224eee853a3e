using System.CommandLine;
using Advice.Rules.RuleSets;

namespace AdviceService.Verbs;

/// <summary>The verb "rules snapshot": the rule files parsed and learned from beforehand, as publishing does it.</summary>
internal static class SnapshotVerb
{
    public static Command Command(RuleOptions rules)
    {
        var snapshot = new Command("snapshot", $"Write {Snapshot.FileName} into the folder of the rules, so that a start need neither parse them nor learn from their phrases");
        snapshot.SetAction(parsed => RuleFolder.Snapshot(rules.ForAuthor(parsed)));
        return snapshot;
    }
}
