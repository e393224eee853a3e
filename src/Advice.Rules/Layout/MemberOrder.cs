namespace Advice.Rules.Layout;

/// <summary>The order in which the members of an entry stand, by kind: what it is, what it is about, when, how much, why, by whom.</summary>
internal static class MemberOrder
{
    private static readonly Dictionary<string, string[]> Orders = new(StringComparer.Ordinal)
    {
        ["systems"] = ["id", "name", "plain", "trouble", "words", "hints"],
        ["sources"] = ["id", "grade", "document", "place", "note"],
        ["areas"] = ["id", "name"],
        ["occasions"] = ["id", "within", "name", "event", "phrases"],
        ["positions"] = ["id", "parts", "phrases"],
        ["topics"] = ["id", "says", "words"],
        ["jurisdictions"] = ["id", "name", "within"],
        ["ageing"] = ["id", "name", "odometerKm", "ageYears", "source"],
        ["consequences"] = ["id", "harm", "name", "source"],
        ["cautions"] = ["id", "text", "plain", "vehicle", "impliedBy", "source"],
        ["set-ups"] = ["id", "name", "order", "minutes", "doneBy", "drives", "includes", "raises", "cautions", "impliedBy", "without"],
        ["facts"] = ["id", "name", "values", "truth", "number", "kinds", "shares", "source"],
        ["symptoms"] = ["id", "name", "plain", "specificity", "ask", "told", "phrases", "sentences", "source"],
        ["codes"] = ["id", "meaning", "plain", "system", "source"],
        ["code-families"] = ["id", "starts", "name", "plain", "scope", "caveat", "source"],
        ["failure-types"] = ["id", "starts", "name", "plain", "source"],
        ["faults"] = ["id", "name", "plain", "system", "places", "prior", "ageing", "consequence", "deficiency", "source"],
        ["parts"] = ["id", "name", "plain", "faults"],
        ["checks"] =
        [
            "id", "title", "plain", "system", "area", "places", "minutes", "doneBy", "needs", "readsCodes", "without", "tools", "method", "measures",
            "observations", "arithmetic", "freezeFrame", "detects", "falseAlarm", "cautions", "source",
        ],
        ["limits"] =
        [
            "id", "check", "acrossAxle", "minimum", "maximum", "times", "unit", "means", "jurisdiction", "vehicle", "position", "deficiency",
            "text", "plain", "source",
        ],
        ["meanings"] = ["id", "computation", "verdicts", "text", "plain", "checks", "source"],
        ["wordings"] = ["id", "text", "plain", "source"],
        ["services"] = ["id", "name", "phrases", "plain", "system", "because", "neverLate", "intervals", "source"],
        ["shows"] = ["id", "fault", "symptom", "code", "occasions", "vehicle", "without", "often", "because", "plain", "source"],
        ["prone"] = ["id", "fault", "faults", "vehicle", "service", "odds", "because", "plain", "source"],
        ["fits"] = ["id", "faults", "checks", "services", "vehicle", "onlyIf", "because", "plain", "source"],
        ["implies"] = ["id", "symptom", "code", "occasions", "vehicle", "without", "implies", "because", "plain", "source"],
        ["warns"] =
        [
            "id", "symptom", "symptoms", "check", "checks", "fault", "probability", "occasions", "vehicle", "without", "caution", "because",
            "plain", "source",
        ],
        ["driving"] = ["id", "symptom", "symptoms", "fault", "probability", "occasions", "vehicle", "without", "advice", "because", "plain", "source"],
        ["normal"] = ["id", "symptom", "occasions", "vehicle", "without", "share", "text", "plain", "source"],
        ["cases"] = ["id", "given", "first", "among", "never", "suspect", "judged", "cautions", "noCautions", "driving", "normal"],
        ["replaces"] = ["kind", "id", "because"],
        ["off"] = ["kind", "id", "because"],
    };

    /// <summary>The order of a kind; none where it is not known.</summary>
    public static IReadOnlyList<string> Of(string kind) => Orders.GetValueOrDefault(kind, []);

    /// <summary>Items in the order of their members; those that the kind does not have come last, as they stand.</summary>
    public static IEnumerable<T> Sort<T>(string kind, IEnumerable<T> items, Func<T, string> member)
    {
        var order = Of(kind);
        return items.OrderBy(item => order.Index().Where(one => one.Item == member(item)).Select(one => one.Index).DefaultIfEmpty(int.MaxValue).First());
    }
}
