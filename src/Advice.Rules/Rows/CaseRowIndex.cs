namespace Advice.Rules.Rows;

/// <summary>Rows of one kind by the first thing that they ask for: a fault, else a check, else a symptom.</summary>
/// <param name="rows">Every row with what it asks for, by rule.</param>
internal sealed class CaseRowIndex<TRow>(IReadOnlyCollection<(IReadOnlyList<string> Symptoms, string? Fault, IReadOnlyList<string> Checks, TRow Row)> rows)
    where TRow : CaseRow
{
    private readonly RowsBy<string, TRow> _bySymptom = new(rows
        .Where(one => one.Symptoms.Count > 0 && one.Fault is null && one.Checks.Count == 0).Select(one => (one.Symptoms[0], one.Row)));

    private readonly RowsBy<string, TRow> _byFault = new(rows.Where(one => one.Fault is not null).Select(one => (one.Fault!, one.Row)));

    private readonly RowsBy<string, TRow> _byCheck = new(rows.Where(one => one.Fault is null).SelectMany(one => one.Checks, (one, check) => (check, one.Row)));

    /// <summary>The rows that these symptoms, faults and checks bring, each once.</summary>
    public IEnumerable<TRow> Of(IEnumerable<string> symptoms, IEnumerable<string> faults, IReadOnlyCollection<string> checks)
    {
        foreach (var symptom in symptoms)
        {
            foreach (var row in _bySymptom[symptom])
                yield return row;
        }

        foreach (var fault in faults)
        {
            foreach (var row in _byFault[fault])
                yield return row;
        }

        foreach (var row in checks.SelectMany(check => _byCheck[check]).Distinct())
            yield return row;
    }
}
