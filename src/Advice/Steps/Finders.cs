using System.Collections.Frozen;
using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Conditions;
using Advice.Suspects;

namespace Advice.Steps;

/// <summary>Which check finds which fault, prepared once for all cases.</summary>
internal sealed class Finders
{
    private readonly FrozenDictionary<string, Finder[]> _byFault;
    private readonly FrozenDictionary<string, int> _numbers;
    private readonly List<Need> _needs = [];

    public Finders(Catalogue catalogue)
    {
        Checks = [.. catalogue.Checks.Values.OrderBy(check => check.Id, StringComparer.Ordinal)];
        Minutes = [.. Checks.Select(check => (double)(check.Minutes + check.Needs.Sum(need => need.Minutes)))];
        Drives = [.. Checks.Select(check => check.Needs.Any(need => need.Drives))];
        _numbers = Checks.Index().ToFrozenDictionary(one => one.Item.Id, one => one.Index);
        var needs = new Dictionary<string, int>();
        _byFault = catalogue.Faults.Keys.Order(StringComparer.Ordinal).ToFrozenDictionary(
            fault => fault,
            fault => catalogue.ChecksByFault[fault]
                .Select(check => new Finder(_numbers[check.Id], NeedOf(check, fault, catalogue, needs), check.Surely(fault))).ToArray());
    }

    /// <summary>All checks by id.</summary>
    public Check[] Checks { get; }

    /// <summary>Place of a check among them.</summary>
    public int NumberOf(string check) => _numbers[check];

    /// <summary>What each check costs where it stands alone, min: the ranking takes minutes as additive.</summary>
    public double[] Minutes { get; }

    /// <summary>Whether each check is done on the road.</summary>
    public bool[] Drives { get; }

    /// <summary>All that checks need.</summary>
    public IReadOnlyList<Need> Needs => _needs;

    /// <summary>The checks that find each of some faults.</summary>
    public Finder[][] Of(IReadOnlyList<Suspect> suspects) => [.. suspects.Select(suspect => _byFault[suspect.Instance.Fault.Id])];

    // Many checks need the same, and most faults settle the same of it or nothing, so that few needs stand for all pairs.
    private int NeedOf(Check check, string fault, Catalogue catalogue, Dictionary<string, int> known)
    {
        var given = catalogue.FitsByFault[fault].SelectMany(rule => rule.When.Tests).ToList();
        var fits = catalogue.FitsByCheck[check.Id].ToList();
        var settled = fits.Where(rule => rule.When.Tests.All(test => given.Exists(test.FollowsFrom))).ToList();
        var key = $"{VehicleFit.Key(fits)}, {VehicleFit.Key(settled)}";
        if (known.TryAdd(key, _needs.Count))
            _needs.Add(new Need(fits, settled));
        return known[key];
    }
}
