using Advice.Rules.Tests.Oracles;
using Benchmarks.Floor;
using Benchmarks.Peers;

namespace Benchmarks;

/// <summary>Which rules hold for a case: the service and its peers over the same rules and requests.</summary>
internal sealed class Matching
{
    private readonly Corpus _corpus;
    private readonly IReadOnlyList<Asked> _asked;
    private readonly IReadOnlyList<FlatRule> _rules;
    private readonly IReadOnlyList<FlatRequest> _requests;

    public Matching(Corpus corpus)
    {
        _corpus = corpus;
        _asked = corpus.Asked();
        _rules = [.. Translation.Of(corpus.Book.Catalogue)];
        _requests = [.. _asked.Select(one => Flattening.Of(one, corpus.Book))];
    }

    /// <summary>CPU time per case, µs, by engine.</summary>
    public Dictionary<string, double> Times()
    {
        var floor = new PlainBook(_corpus.Book.Catalogue, _corpus.Book.Revision);
        var engine = new RulesEnginePeer(_rules);
        var inputs = _requests.Select(RulesEnginePeer.Input).ToList();
        var textbook = new TextbookRules(_corpus.Book.Catalogue);
        var cases = _asked.Select(one => new RandomCase(one.Case, one.Suspected, one.Advised)).ToList();
        var few = Enumerable.Range(0, cases.Count).Where(i => i % 12 == 0).ToList();
        Agree(few, i => engine.Run(inputs[i]), "RulesEngine");
        foreach (var i in few)
        {
            Require(textbook.Run(cases[i]).ToString() == Findings.Of(_corpus.Book, cases[i]).ToString(), "the textbook translation", i);
            Require(Findings.Of(floor, cases[i]).InOrder == Findings.Of(_corpus.Book, cases[i]).InOrder, "plain C#", i);
        }

        var times = CpuTime.Of(
            TimeSpan.FromMilliseconds(200),
            ("service", _asked.Count, i => _asked[i].Run(_corpus.Book)),
            ("plain C#", _asked.Count, i => _asked[i].Run(floor)),
            ("RulesEngine", few.Count, i => engine.Run(inputs[few[i]])),
            ("textbook NRules", few.Count, i => textbook.Run(cases[few[i]])));
        List<FlatRequest> sent = [.. few.Select(i => _requests[i])];
        foreach (var name in new[] { "json-rules-engine", "zen-engine" })
        {
            if (OutsidePeer.Time(name, _rules, sent) is { } time)
                times[name] = time;
        }

        return times;
    }

    /// <summary>What the rules say flatly, so that a person can look at it.</summary>
    public string Summary => $"{_rules.Count} flat rules; a case meets {_requests.Average(one => one.Expected.Count):0} of them";

    private void Agree(IEnumerable<int> cases, Func<int, IEnumerable<string>> run, string name)
    {
        foreach (var i in cases)
        {
            var found = run(i).ToHashSet(StringComparer.Ordinal);
            found.SymmetricExceptWith(_requests[i].Expected);
            Require(found.Count == 0, name, i, string.Join(", ", found.Order(StringComparer.Ordinal)));
        }
    }

    private static void Require(bool agrees, string name, int request, string disputed = "")
    {
        if (!agrees)
            throw new InvalidOperationException($"For case {request} {name} finds other rules than the service ({disputed}); nothing was measured.");
    }
}
