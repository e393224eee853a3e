using Advice.Knowledge;
using Advice.Knowledge.Signs;

namespace Advice.Rules.Rows;

/// <summary>What rows may ask about a case: what was reported, what follows from it, and, later, what is suspected and advised.</summary>
internal sealed class Inquiry(Case @case, Catalogue catalogue)
{
    private readonly List<Seen> seen = [];
    private IReadOnlyDictionary<string, double> suspected = new Dictionary<string, double>();
    private IReadOnlyCollection<string> advised = [];

    /// <summary>The case.</summary>
    public Case Case { get; } = @case;

    /// <summary>The knowledge.</summary>
    public Catalogue Catalogue { get; } = catalogue;

    /// <summary>Ids of the faults that are suspected.</summary>
    public IEnumerable<string> Suspected => suspected.Keys;

    /// <summary>Adds a sign that was reported or follows from one.</summary>
    public void Add(Seen sign) => seen.Add(sign);

    /// <summary>Opens the second stage.</summary>
    public void Suspect(IReadOnlyDictionary<string, double> faults) => suspected = faults;

    /// <summary>Opens the third stage.</summary>
    public void Advise(IReadOnlyCollection<string> checks) => advised = checks;

    /// <summary>Whether one of these symptoms was reported present. What only follows from a report does not count.</summary>
    public bool ReportsAny(IReadOnlyList<string> symptoms) =>
        symptoms.Count > 0 && Case.Reports.Any(report => report.Present && symptoms.Contains(report.Symptom));

    /// <summary>Whether all of these symptoms are there, the first of them on a fitting occasion.</summary>
    public bool SeesAll(IReadOnlyList<string> symptoms, IReadOnlyList<string> occasions)
    {
        for (var i = 0; i < symptoms.Count; i++)
        {
            var sign = Sign.Symptom(symptoms[i]);
            var asked = i == 0 ? occasions : [];
            if (!seen.Exists(one => one.Sign.Present && one.Sign.Sign == sign && one.Concerns(asked, Catalogue)))
                return false;
        }

        return true;
    }

    /// <summary>Whether a fault is suspected at least that much; true where none is asked for.</summary>
    public bool Suspects(string? fault, double probability) => fault is null || suspected.GetValueOrDefault(fault) >= probability;

    /// <summary>Whether one of these checks is advised; true where none is asked for.</summary>
    public bool AdvisesAny(IReadOnlyList<string> checks) => checks.Count == 0 || checks.Any(advised.Contains);
}
