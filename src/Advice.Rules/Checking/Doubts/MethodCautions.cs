using System.Text.RegularExpressions;
using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Rules;

namespace Advice.Rules.Checking.Doubts;

/// <summary>Checks whose method calls for a set-up or caution that they do not name, by the words under 'impliedBy'.</summary>
internal sealed partial class MethodCautions(Tables tables, Problems doubts)
{
    private static readonly char[] Ends = ['.', ';', ':', '!', '?'];

    private readonly Existence _existence = new(tables);
    private readonly ILookup<string, string> _warned = tables.Rules.Bound.OfType<WarnsRule>()
        .SelectMany(rule => rule.Checks, (rule, check) => (rule.Caution, check)).ToLookup(pair => pair.check, pair => pair.Caution);

    /// <summary>Checks every check.</summary>
    public void Check()
    {
        var setUps = tables.SetUps.Bound.Select(setUp => (SetUp: setUp, Words: Words(tables.SetUps, setUp.Id))).Where(one => one.Words.Length > 0).ToList();
        var cautions = tables.Cautions.Bound.Select(caution => (Caution: caution, Words: Words(tables.Cautions, caution.Id))).Where(one => one.Words.Length > 0).ToList();
        foreach (var check in tables.Checks.Bound)
        {
            var clauses = check.Method.SelectMany(step => step.ToLowerInvariant().Split(Ends)).ToList();
            foreach (var (setUp, words) in setUps)
            {
                if (Said(clauses, words) is { } said && !Arranges(check, setUp))
                    Doubt(check, said, $"the set-up '{setUp.Id}' or its cautions");
            }

            foreach (var (caution, words) in cautions)
            {
                if (Said(clauses, words) is { } said && !Warns(check, caution))
                    Doubt(check, said, $"the caution '{caution.Id}'");
            }
        }
    }

    private (string Written, string Lower)[] Words(IDeclaredIds ids, string id) => [.. tables.ImpliedBy(ids, id).Select(phrase => (phrase, phrase.ToLowerInvariant()))];

    private static string? Said(List<string> clauses, (string Written, string Lower)[] words) =>
        Array.Find(words, phrase => clauses.Exists(clause => Says(clause, phrase.Lower))).Written;

    private void Doubt(Check check, string said, string calledFor) =>
        doubts.Add(WarningCode.MissingCaution, tables.Checks.PlaceOf(check.Id), $"the method of '{check.Id}' says \"{said}\", which calls for {calledFor}");

    // "Never start the engine" starts none.
    private static bool Says(string clause, string phrase)
    {
        for (var at = clause.IndexOf(phrase, StringComparison.Ordinal); at >= 0; at = clause.IndexOf(phrase, at + 1, StringComparison.Ordinal))
        {
            if (!IsInWord(clause, at - 1) && !IsInWord(clause, at + phrase.Length))
                return !Denials().IsMatch(clause[..at]);
        }

        return false;
    }

    private static bool IsInWord(string text, int at) => at >= 0 && at < text.Length && char.IsLetterOrDigit(text[at]);

    private static bool Arranges(Check check, SetUp setUp) =>
        check.Needs.Any(need => need.Id == setUp.Id || (setUp.Raises && need.Raises) || (setUp.Drives && need.Drives))
        || (setUp.Cautions.Count > 0 && setUp.Cautions.All(check.Cautions.Contains));

    private bool Warns(Check check, Caution caution) =>
        check.Cautions.Contains(caution.Id) || _warned[check.Id].Contains(caution.Id)
        || Conditions.Clash(_existence.OfCheck(check.Id).Concat(caution.When.Tests)) is not null;

    [GeneratedRegex(@"\b(not|never|without|no|before|nor)\b")]
    private static partial Regex Denials();
}
