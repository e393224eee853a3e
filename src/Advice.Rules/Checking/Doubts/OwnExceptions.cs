using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;

namespace Advice.Rules.Checking.Doubts;

/// <summary>Rules that do not apply when something is reported that is certain wherever they do apply.</summary>
internal sealed class OwnExceptions(Tables tables, Problems doubts)
{
    private readonly ILookup<string, string> _implied = tables.Rules.Bound.OfType<ImpliesRule>()
        .Where(rule => rule.Sign.Kind == SignKind.Symptom && rule.Implied.Kind == SignKind.Symptom && rule is { Occasions.Count: 0, Without.Count: 0, When.Tests.Count: 0 })
        .ToLookup(rule => rule.Sign.Id, rule => rule.Implied.Id);

    /// <summary>Checks every rule with a symptom.</summary>
    public void Check()
    {
        foreach (var rule in tables.Rules.Bound)
        {
            var (symptoms, without) = Asked(rule);
            if (symptoms.SelectMany(Implied).FirstOrDefault(without.Contains) is { } denied)
                doubts.Add(WarningCode.ExcludesImplied, tables.Rules.PlaceOf(rule.Id), $"'{rule.Id}' does not apply when '{denied}' is reported, yet '{denied}' is certain wherever it applies; leave it out of 'without'");
        }
    }

    private static (IReadOnlyList<string> Symptoms, IReadOnlyList<string> Without) Asked(Rule rule) => rule switch
    {
        ShowsRule { Sign.Kind: SignKind.Symptom } shows => ([shows.Sign.Id], shows.Without),
        ImpliesRule { Sign.Kind: SignKind.Symptom } implies => ([implies.Sign.Id], implies.Without),
        NormalRule normal => ([normal.Symptom], normal.Without),
        WarnsRule warns => (warns.Symptoms, warns.Without),
        DrivingRule driving => (driving.Symptoms, driving.Without),
        _ => ([], []),
    };

    // The loader has refused loops, so that this ends.
    private IEnumerable<string> Implied(string symptom) => _implied[symptom].SelectMany(next => Implied(next).Prepend(next));
}
