using System.Text.RegularExpressions;
using Advice.Knowledge;

namespace Advice.Rules.Checking.Doubts;

/// <summary>Checks whose method calls for a set-up or caution that they do not name, by the words under 'impliedBy'.</summary>
internal sealed partial class MethodCautions(Tables tables, Problems doubts)
{
    private readonly Existence _existence = new(tables);
    private readonly ILookup<string, string> _warned = tables.Rules.Bound.OfType<WarnsRule>()
        .SelectMany(rule => rule.Checks, (rule, check) => (rule.Caution, check)).ToLookup(pair => pair.check, pair => pair.Caution);

    /// <summary>Checks every check.</summary>
    public void Check()
    {
        foreach (var check in tables.Checks.Bound)
        {
            var clauses = check.Method.SelectMany(step => Ends().Split(step.ToLowerInvariant())).ToList();
            foreach (var setUp in tables.SetUps.Bound.Where(setUp => !Arranges(check, setUp)))
                Doubt(check, clauses, tables.ImpliedBy(tables.SetUps, setUp.Id), $"the set-up '{setUp.Id}' or its cautions");
            foreach (var caution in tables.Cautions.Bound.Where(caution => !Warns(check, caution)))
                Doubt(check, clauses, tables.ImpliedBy(tables.Cautions, caution.Id), $"the caution '{caution.Id}'");
        }
    }

    private void Doubt(Check check, List<string> clauses, IReadOnlyList<string> words, string calledFor)
    {
        if (words.FirstOrDefault(phrase => clauses.Exists(clause => Says(clause, phrase.ToLowerInvariant()))) is { } said)
            doubts.Add(WarningCode.MissingCaution, tables.Checks.PlaceOf(check.Id), $"the method of '{check.Id}' says \"{said}\", which calls for {calledFor}");
    }

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

    [GeneratedRegex(@"[.;:!?]")]
    private static partial Regex Ends();

    [GeneratedRegex(@"\b(not|never|without|no|before|nor)\b")]
    private static partial Regex Denials();
}
