using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Suspects;

namespace Advice.Rules.Bench;

/// <summary>What harm the steps of a case leave to be found, step by step as the ranking took them.</summary>
internal sealed class HarmLeft(Catalogue catalogue, Advised advised)
{
    private readonly Dictionary<Suspect, double> _left = advised.Suspicion.Raised.ToDictionary(suspect => suspect, suspect => suspect.Weight);

    /// <summary>What a check would find of each suspect: the weight that is left, and how surely.</summary>
    public IEnumerable<(Suspect Suspect, double Left, double Surely)> FoundBy(Check check) => advised.Suspicion.Raised
        .Where(suspect => check.Surely(suspect.Instance.Fault.Id) > 0)
        .Select(suspect => (suspect, _left[suspect], catalogue.Surely(check, suspect.Instance.Fault.Id, advised.Case.Vehicle)));

    /// <summary>Goes on to what a check leaves.</summary>
    public void Take(Check check)
    {
        foreach (var (suspect, left, surely) in FoundBy(check).ToList())
            _left[suspect] = left * (1 - surely);
    }
}
