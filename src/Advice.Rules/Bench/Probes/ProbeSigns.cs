using Advice.Findings;
using Advice.Knowledge;
using Advice.Knowledge.Signs;
using Advice.Symptoms;

namespace Advice.Rules.Bench.Probes;

/// <summary>Signs as a case would hold them.</summary>
internal static class ProbeSigns
{
    private const int MostFindings = 3;

    /// <summary>The case with one more sign, on the first of these occasions.</summary>
    public static Case With(Case @case, Sign sign, IReadOnlyList<string> occasions) => sign.Kind == SignKind.Code
        ? @case with { Codes = [.. @case.Codes.Append(sign.Id).Distinct().Order(StringComparer.Ordinal)] }
        : @case with { Reports = [.. @case.Reports.Where(report => report.Symptom != sign.Id), new Report(sign.Id, [.. occasions.Take(1)], null, true)] };

    /// <summary>The case with what speaks for a fault on any vehicle: one finding, then more of them, then what is noticed besides.</summary>
    public static IEnumerable<Case> For(Case @case, string fault, IReadOnlyList<string> without, Catalogue catalogue)
    {
        var findings = catalogue.ChecksByFault[fault].OrderByDescending(check => check.Surely(fault)).ThenBy(check => check.Id, StringComparer.Ordinal)
            .Select(check => new Outcome(check.Id, null, check.Detects.First(detects => detects.Fault == fault).Value ?? check.Abnormal.First().Id)).Take(MostFindings);
        foreach (var finding in findings)
        {
            @case = @case with { Outcomes = [.. @case.Outcomes, finding] };
            yield return @case;
        }

        foreach (var shows in catalogue.ShowsByFault[fault].Where(shows => shows.When.Tests.Count == 0 && !without.Contains(shows.Sign.Id)))
        {
            @case = With(@case, shows.Sign, shows.Occasions);
            yield return @case;
        }
    }
}
