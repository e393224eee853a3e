using System.Collections.Frozen;
using Advice.Inference;
using Advice.Knowledge;

namespace Advice.Questions;

/// <summary>How much symptoms would tell about what is suspected: the expected change of harm-weighted probability, relative to the harm suspected now.</summary>
internal sealed class SuspectWorth
{
    private readonly Catalogue _catalogue;
    private readonly Symptom[] _symptoms;
    private readonly FrozenDictionary<string, (int Symptom, ShowsRule Rule)[]> _shownByFault;

    public SuspectWorth(Catalogue catalogue)
    {
        _catalogue = catalogue;
        _symptoms = [.. catalogue.Symptoms.Values.OrderBy(symptom => symptom.Id, StringComparer.Ordinal)];
        var numbers = _symptoms.Index().ToDictionary(one => one.Item.Id, one => one.Index);
        _shownByFault = catalogue.Faults.Keys.ToFrozenDictionary(fault => fault, fault => catalogue.ShowsByFault[fault]
            .Where(rule => rule.Sign.Kind == SignKind.Symptom).Select(rule => (numbers[rule.Sign.Id], rule)).ToArray());
    }

    /// <summary>Each symptom that a raised suspect would show.</summary>
    public IEnumerable<(Symptom Symptom, double Worth)> Of(Advised advised, Func<Symptom, bool> isOpen)
    {
        var suspects = advised.Suspicion.Raised;
        var harm = suspects.Sum(suspect => suspect.Probability * suspect.Instance.Fault.Consequence.Harm);
        if (harm <= 0)
            return [];
        var probabilities = suspects.Select(suspect => suspect.Probability).ToArray();
        var harms = suspects.Select(suspect => suspect.Instance.Fault.Consequence.Harm / harm).ToArray();
        return Links(advised, Array.ConvertAll(_symptoms, symptom => isOpen(symptom))).Index().Where(one => one.Item is not null).Select(one =>
            (_symptoms[one.Index], ExpectedChange.Worth(probabilities, harms, _catalogue.Leaks[Sign.Symptom(_symptoms[one.Index].Id)], one.Item!)));
    }

    /// <summary>What the raised suspects would show, for each symptom that may be asked for.</summary>
    private List<CauseLink>?[] Links(Advised advised, bool[] open)
    {
        var (vehicle, spoken, raised) = (advised.Case.Vehicle, advised.Spoken, advised.Suspicion.Raised);
        var links = new List<CauseLink>?[_symptoms.Length];
        for (var cause = 0; cause < raised.Count; cause++)
        {
            foreach (var (symptom, rule) in _shownByFault[raised[cause].Instance.Fault.Id])
            {
                if (!open[symptom] || rule.When.Test(vehicle) == Truth.No || (rule.Without.Count > 0 && rule.Without.Any(spoken.Contains)))
                    continue;
                (links[symptom] ??= []).Add(new CauseLink(cause, rule.Often * rule.When.Share(vehicle)));
            }
        }

        return links;
    }
}
