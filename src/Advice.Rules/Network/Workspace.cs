using Advice.Evidence;
using Advice.Knowledge;
using Advice.Rules.Rows;

namespace Advice.Rules.Network;

/// <summary>What the rules of one session write to.</summary>
internal sealed class Workspace(Inquiry inquiry, TriggerIndex index)
{
    private readonly HashSet<string> _linkedFaults = [];
    private readonly HashSet<SeenSign> _signs = [];

    public List<Link> Links { get; } = [];

    public List<OddsFactor> Factors { get; } = [];

    public List<ImpliedSign> Implied { get; } = [];

    public List<NormalReport> Normals { get; } = [];

    public List<WarnsRule> Cautions { get; } = [];

    public List<DrivingRule> Driving { get; } = [];

    /// <summary>Candidates that a sign brings, once per sign.</summary>
    public IReadOnlyList<SignCandidate> See(Seen seen)
    {
        if (!_signs.Add(seen.Sign))
            return [];
        inquiry.Add(seen);
        return [.. index.Of(seen.Sign.Sign).Select(row => new SignCandidate(row, seen, inquiry))];
    }

    /// <summary>Candidates that a fault brings, once per fault.</summary>
    public IReadOnlyList<CaseCandidate> Link(Link link)
    {
        Links.Add(link);
        return _linkedFaults.Add(link.Fault) ? [.. index.FactorsOf(link.Fault).Select(row => new CaseCandidate(row, inquiry))] : [];
    }
}
