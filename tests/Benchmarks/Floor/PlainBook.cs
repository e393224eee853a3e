using Advice;
using Advice.Evidence;
using Advice.Knowledge;
using Advice.Rules.Rows;

namespace Benchmarks.Floor;

/// <summary>The floor: the same rows by the same index, run by plain C# loops.</summary>
internal sealed class PlainBook(Catalogue catalogue, string revision) : IRuleBook
{
    private readonly TriggerIndex _index = new(catalogue);

    public Catalogue Catalogue => catalogue;

    public string Revision => revision;

    public IRuleSession Open(Case @case) => new PlainSession(@case, catalogue, _index);
}
