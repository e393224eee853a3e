using Advice;
using Advice.Evidence;

namespace Benchmarks;

/// <summary>What the three stages of a session are asked.</summary>
internal sealed record Asked(Case Case, IReadOnlyDictionary<string, double> Suspected, IReadOnlyList<string> Advised)
{
    /// <summary>Runs the three stages and counts what they conclude, so that nothing is optimised away.</summary>
    public int Run(IRuleBook rules)
    {
        var session = rules.Open(Case);
        var evidence = session.Gather();
        return evidence.Links.Count + evidence.Factors.Count + session.LimitDriving(Suspected).Count + session.Caution(Advised).Count;
    }
}
