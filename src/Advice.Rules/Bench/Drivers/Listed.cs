using Advice.Knowledge;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;

namespace Advice.Rules.Bench.Drivers;

/// <summary>Goes down a list of symptoms and asks for those that any suspect would show and a driver can tell.</summary>
/// <param name="catalogue">The knowledge.</param>
/// <param name="name">What it is called where it is printed.</param>
/// <param name="list">The list, for a case.</param>
public sealed class Listed(Catalogue catalogue, string name, Func<Case, IReadOnlyList<string>> list) : IAskingOrder
{
    /// <inheritdoc/>
    public string Name => name;

    /// <summary>The commonest symptoms first, the same list for everybody.</summary>
    public static Listed CommonestFirst(Catalogue catalogue)
    {
        ArgumentNullException.ThrowIfNull(catalogue);
        var share = catalogue.Rules.Values.OfType<ShowsRule>().Where(rule => rule.Sign.Kind == SignKind.Symptom)
            .GroupBy(rule => rule.Sign.Id).ToDictionary(group => group.Key, group => group.Sum(rule => rule.Often * catalogue.Faults[rule.Fault].Prior));
        IReadOnlyList<string> order = [.. share.OrderByDescending(one => one.Value).ThenBy(one => one.Key, StringComparer.Ordinal).Select(one => one.Key)];
        return new Listed(catalogue, "commonest first", _ => order);
    }

    /// <summary>Any order, another one for each first report.</summary>
    public static Listed AtRandom(Catalogue catalogue, int seed)
    {
        ArgumentNullException.ThrowIfNull(catalogue);
        IReadOnlyList<string> all = [.. catalogue.Symptoms.Keys.Order(StringComparer.Ordinal)];
        return new Listed(catalogue, "at random", @case =>
        {
            var order = all.ToArray();
            new Random(seed + all.ToList().IndexOf(@case.Reports[0].Symptom)).Shuffle(order);
            return order;
        });
    }

    /// <inheritdoc/>
    public string? Next(Advised advised, IReadOnlySet<string> asked)
    {
        ArgumentNullException.ThrowIfNull(advised);
        var shown = advised.Suspicion.Raised.SelectMany(suspect => catalogue.ShowsByFault[suspect.Instance.Fault.Id]).Where(rule => rule.Sign.Kind == SignKind.Symptom)
            .Select(rule => rule.Sign.Id).Where(symptom => double.IsFinite(catalogue.Symptoms[symptom].Effort)).ToHashSet();
        var spoken = advised.Spoken;
        return list(advised.Case).FirstOrDefault(symptom => shown.Contains(symptom) && !spoken.Contains(symptom) && !asked.Contains(symptom));
    }
}
