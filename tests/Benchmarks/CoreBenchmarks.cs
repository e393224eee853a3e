using Advice;
using Advice.Documents;
using Advice.Rules.Cases;
using BenchmarkDotNet.Attributes;
using Benchmarks.Floor;

namespace Benchmarks;

/// <summary>Wall time and garbage of the core by BenchmarkDotNet, over all cases; the ratios of docs/performance.md are taken by CPU time.</summary>
[InProcess]
[MemoryDiagnoser]
public class CoreBenchmarks
{
    private readonly Corpus _corpus = new();
    private readonly PlainBook _floor;
    private readonly IReadOnlyList<Asked> _asked;
    private readonly GiveAdvice _give;
    private readonly Assessment _assessment;
    private int _next;

    public CoreBenchmarks()
    {
        _floor = new PlainBook(_corpus.Book.Catalogue, _corpus.Book.Revision);
        _asked = _corpus.Asked();
        _give = new GiveAdvice(_corpus.Book, new CaseClock());
        _assessment = new Assessment(_corpus.Book);
    }

    private int Next => _next = (_next + 1) % _corpus.Cases.Count;

    [Benchmark(Baseline = true)]
    public int PlainRules() => _asked[Next].Run(_floor);

    [Benchmark]
    public int Rules() => _asked[Next].Run(_corpus.Book);

    [Benchmark]
    public Advised Assess() => _assessment.Of(_corpus.Cases[Next]);

    [Benchmark]
    public AdviceDocument Advise() => _give.To(_corpus.Requests[Next]);
}
