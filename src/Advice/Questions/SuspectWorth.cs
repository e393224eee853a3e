using System.Collections.Frozen;
using Advice.Inference;
using Advice.Knowledge;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;

namespace Advice.Questions;

/// <summary>How much symptoms would tell about what is suspected: the expected change of harm-weighted probability, relative to the harm suspected now.</summary>
internal sealed class SuspectWorth
{
    private readonly Symptom[] _symptoms;
    private readonly double[] _leaks;
    private readonly FrozenDictionary<string, (int Symptom, ShowsRule Rule)[]> _shownByFault;

    public SuspectWorth(Catalogue catalogue)
    {
        _symptoms = [.. catalogue.Symptoms.Values.OrderBy(symptom => symptom.Id, StringComparer.Ordinal)];
        _leaks = [.. _symptoms.Select(symptom => catalogue.Leaks[Sign.Symptom(symptom.Id)])];
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
        return Links(advised).Index().Where(one => one.Item is not null && isOpen(_symptoms[one.Index]))
            .Select(one => (_symptoms[one.Index], ExpectedChange.Worth(probabilities, harms, _leaks[one.Index], one.Item!)));
    }

    /// <summary>What the raised suspects would show, for each symptom.</summary>
    private List<CauseLink>?[] Links(Advised advised)
    {
        var (vehicle, spoken, raised) = (advised.Case.Vehicle, advised.Spoken, advised.Suspicion.Raised);
        var links = new List<CauseLink>?[_symptoms.Length];
        for (var cause = 0; cause < raised.Count; cause++)
        {
            foreach (var (symptom, rule) in _shownByFault[raised[cause].Instance.Fault.Id])
            {
                if (rule.When.Test(vehicle) == Truth.No || (rule.Without.Count > 0 && rule.Without.Any(spoken.Contains)))
                    continue;
                (links[symptom] ??= []).Add(new CauseLink(cause, rule.Often * rule.When.Share(vehicle)));
            }
        }

        return links;
    }
}
