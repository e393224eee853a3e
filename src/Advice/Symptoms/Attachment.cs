namespace Advice.Symptoms;

/// <summary>Tells which statements an occasion or position belongs to.</summary>
internal static class Attachment
{
    /// <summary>Those of its own clause; else those of the clause beside it.</summary>
    /// <param name="statements">The statements of its sentence.</param>
    /// <param name="clause">Its clause.</param>
    /// <param name="ahead">Whether it looks ahead first, as a clause that opens with "when" does, otherwise back.</param>
    public static IReadOnlyList<Statement> Beside(IReadOnlyList<Statement> statements, int clause, bool ahead)
    {
        int[] order = ahead ? [clause, clause + 1, clause - 1] : [clause, clause - 1, clause + 1];
        return order.Select(c => statements.Where(s => s.IsIn(c)).ToList()).FirstOrDefault(s => s.Count > 0, []);
    }
}
