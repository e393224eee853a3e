using System.Collections.Frozen;
using Advice.Knowledge;
using Advice.Knowledge.Rules;

namespace Advice.Suspects;

/// <summary>The faults of a rule set, numbered by id. Hundreds of faults share a few ways to age and a few conditions to exist, so that each of
/// those has its number too.</summary>
internal sealed class NumberedFaults
{
    private readonly FrozenDictionary<string, int> _numbers;

    public NumberedFaults(Catalogue catalogue)
    {
        var (ageings, fits) = (new Dictionary<string, int>(), new Dictionary<string, int>());
        var (ways, needs) = (new List<Ageing>(), new List<FitsRule[]>());
        All = [.. catalogue.Faults.Values.OrderBy(fault => fault.Id, StringComparer.Ordinal).Select(Numbered)];
        (Ageings, Fits) = (ways, needs);
        _numbers = All.Index().ToFrozenDictionary(one => one.Item.Fault.Id, one => one.Index);

        NumberedFault Numbered(Fault fault)
        {
            FitsRule[] own = [.. catalogue.FitsByFault[fault.Id]];
            return new NumberedFault(
                fault, fault.Prior / (1 - fault.Prior), Number(fault.Ageing.Id, fault.Ageing, ageings, ways), Number(string.Join(' ', own.Select(rule => rule.Id)), own, fits, needs));
        }
    }

    /// <summary>All faults by id.</summary>
    public NumberedFault[] All { get; }

    /// <summary>The ways in which they age.</summary>
    public IReadOnlyList<Ageing> Ageings { get; }

    /// <summary>What they need to exist.</summary>
    public IReadOnlyList<FitsRule[]> Fits { get; }

    /// <summary>The number of a fault.</summary>
    public int NumberOf(string fault) => _numbers[fault];

    private static int Number<T>(string key, T one, Dictionary<string, int> numbers, List<T> all)
    {
        if (numbers.TryAdd(key, all.Count))
            all.Add(one);
        return numbers[key];
    }
}
