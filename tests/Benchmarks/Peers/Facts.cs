namespace Benchmarks.Peers;

/// <summary>What expressions of RulesEngine ask. A number that is not known meets no bound.</summary>
public sealed class Facts
{
    private readonly FlatRequest _request;

    internal Facts(FlatRequest request) => _request = request;

    public bool Has(string set, string key) => _request.Sets[set].Contains(key);

    public string Word(string fact) => _request.Words[fact];

    public double Number(string fact) => _request.Numbers.TryGetValue(fact, out var number) ? number : double.NaN;
}
