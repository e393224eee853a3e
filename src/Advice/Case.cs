using Advice.Findings;
using Advice.Knowledge.Checks;
using Advice.Symptoms;
using Advice.Symptoms.Mentions;
using Advice.Vehicles;

namespace Advice;

/// <summary>One request, normalised: ids known, units ours, duplicates merged, what is unknown left out.</summary>
public sealed record Case
{
    /// <summary>The day for which ages and dues are reckoned.</summary>
    public required DateOnly AsOf { get; init; }

    /// <summary>Id of the jurisdiction; null = not stated.</summary>
    public string? Jurisdiction { get; init; }

    /// <summary>The vehicle.</summary>
    public required Vehicle Vehicle { get; init; }

    /// <summary>Symptoms reported or denied, ordered by symptom, occasions and position.</summary>
    public IReadOnlyList<Report> Reports { get; init; } = [];

    /// <summary>Ids of symptoms of which the driver cannot say whether they are there.</summary>
    public IReadOnlySet<string> Unsure { get; init; } = new HashSet<string>();

    /// <summary>Whether the complaint speaks of more than one vehicle; all of it is taken for one.</summary>
    public bool SeveralVehicles { get; init; }

    /// <summary>How much the complaint speaks of each system that it names.</summary>
    public SystemsNamed Named { get; init; } = SystemsNamed.None;

    /// <summary>What the complaint says of symptoms that were not read from it, each once.</summary>
    public IReadOnlyList<Inkling> Inklings => Complaint?.Inklings ?? [];

    /// <summary>What was read from the complaint; null = there is none.</summary>
    internal ComplaintReading? Complaint { get; init; }

    /// <summary>Known trouble codes, ordered.</summary>
    public IReadOnlyList<string> Codes { get; init; } = [];

    /// <summary>What checks found, in the order of the request.</summary>
    public IReadOnlyList<Outcome> Outcomes { get; init; } = [];

    /// <summary>Ids of the checks that were done, whether what they found could be judged or not.</summary>
    public IReadOnlySet<string> Done { get; init; } = new HashSet<string>();

    /// <summary>The last service given for each item.</summary>
    public IReadOnlyDictionary<string, ServiceDone> Services { get; init; } = new Dictionary<string, ServiceDone>();

    /// <summary>What can be done where the vehicle is.</summary>
    public Workshop Workshop { get; init; } = Workshop.NotStated;

    /// <summary>The most steps to advise, from 1.</summary>
    public int MostSteps { get; init; } = int.MaxValue;

    /// <summary>The same case with one more report.</summary>
    public Case With(Report report) => this with { Reports = [.. Reports, report] };

    /// <summary>Whether a check is still worth advising: not done, nor done by whoever read the trouble codes, nor out of place with what is reported.</summary>
    public bool IsOpen(Check check) => !Done.Contains(check.Id) && !(check.ReadsCodes && Codes.Count > 0) && Forbids(check) is null;

    /// <summary>Id of the reported symptom with which a check must not be done; null = it may.</summary>
    public string? Forbids(Check check)
    {
        foreach (var symptom in check.Without)
        {
            foreach (var report in Reports)
            {
                if (report.Present && report.Symptom == symptom)
                    return symptom;
            }
        }

        return null;
    }
}
