using Advice.Knowledge;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;
using Advice.Rules.Cases;

namespace Advice.Rules.Bench.Probes;

/// <summary>Cases made for one rule, the simplest first: each meets, as far as its parts go, every condition of the rule.</summary>
internal sealed class ProbeCases(Catalogue catalogue)
{
    /// <summary>The cases; none where no vehicle can meet the conditions.</summary>
    public IEnumerable<Case> Of(Rule rule) => rule switch
    {
        ShowsRule shows => On(shows, shows.Fault).Select(@case => ProbeSigns.With(@case, shows.Sign, shows.Occasions)),
        ProneRule prone => prone.Faults.SelectMany(fault => On(prone, fault).SelectMany(@case => Linked(@case, fault)))
            .Select(@case => prone.Service is null ? @case : ProbeServices.Meeting(@case, prone.Service)),
        FitsRule fits => fits.Services.Count > 0 ? On(fits, null) : InPlay(fits),
        ImpliesRule implies => On(implies, null).Select(@case => ProbeSigns.With(@case, implies.Sign, implies.Occasions)),
        NormalRule normal => On(normal, null).Select(@case => ProbeSigns.With(@case, Sign.Symptom(normal.Symptom), normal.Occasions)),
        DrivingRule driving => Called(driving, driving.Symptoms, driving.Occasions, driving.Fault, driving.Without),
        WarnsRule warns => Called(warns, warns.Symptoms, warns.Occasions, warns.Fault, warns.Without).SelectMany(@case => Advising(@case, warns)),
        _ => throw new ArgumentOutOfRangeException(nameof(rule), rule.GetType().Name, null),
    };

    /// <summary>Symptoms whose report rules a rule out.</summary>
    public static IReadOnlyList<string> ExcludedBy(Rule rule) => rule switch
    {
        ShowsRule shows => shows.Without,
        ImpliesRule implies => implies.Without,
        WarnsRule warns => warns.Without,
        DrivingRule driving => driving.Without,
        NormalRule normal => normal.Without,
        _ => [],
    };

    /// <summary>The case without any sign on a vehicle that can have the fault and meets the rule.</summary>
    private IEnumerable<Case> On(Rule rule, string? fault, string? check = null)
    {
        var asked = rule.When.Tests.Concat(fault is null ? [] : catalogue.FitsByFault[fault].SelectMany(fits => fits.When.Tests))
            .Concat(check is null ? [] : catalogue.FitsByCheck[check].SelectMany(fits => fits.When.Tests));
        return ProbeVehicles.Meeting([.. asked]) is { } vehicle ? [new Case { AsOf = CaseClock.Today, Vehicle = vehicle }] : [];
    }

    private IEnumerable<Case> Linked(Case @case, string fault) => ProbeSigns.For(@case, fault, [], catalogue).Take(1)
        .Concat(catalogue.ShowsByFault[fault].Take(1).Select(shows => ProbeSigns.With(@case, shows.Sign, shows.Occasions)));

    private IEnumerable<Case> InPlay(FitsRule fits) => fits.Faults.SelectMany(fault => Shown(fits, fault, null))
        .Concat(fits.Checks.SelectMany(check => catalogue.Checks[check].Detects.Select(detects => detects.Fault).Distinct().SelectMany(fault => Shown(fits, fault, check))));

    private IEnumerable<Case> Shown(FitsRule fits, string fault, string? check) => On(fits, fault, check)
        .SelectMany(@case => catalogue.ShowsByFault[fault].Select(shows => ProbeSigns.With(@case, shows.Sign, shows.Occasions)));

    private IEnumerable<Case> Called(Rule rule, IReadOnlyList<string> symptoms, IReadOnlyList<string> occasions, string? fault, IReadOnlyList<string> without) =>
        On(rule, fault)
            .Select(@case => symptoms.Index().Aggregate(@case, (one, symptom) => ProbeSigns.With(one, Sign.Symptom(symptom.Item), symptom.Index == 0 ? occasions : [])))
            .SelectMany(@case => fault is null ? [@case] : ProbeSigns.For(@case, fault, without, catalogue));

    /// <summary>First where the check is advised for what it finds, then where it was done.</summary>
    private IEnumerable<Case> Advising(Case @case, WarnsRule warns)
    {
        if (warns.Checks.Count == 0)
            return [@case];
        return warns.Checks.SelectMany(check => catalogue.Checks[check].Detects.OrderByDescending(detects => detects.Surely).Take(1)
                .SelectMany(detects => On(warns, detects.Fault, check).SelectMany(one => Noticed(one with { Reports = @case.Reports }, detects.Fault, warns))))
            .Concat(warns.Checks.Select(check => @case with { Done = new HashSet<string> { check } }));
    }

    private IEnumerable<Case> Noticed(Case @case, string fault, WarnsRule warns) => catalogue.ShowsByFault[fault]
        .Where(shows => !warns.Without.Contains(shows.Sign.Id)).Take(1).Select(shows => ProbeSigns.With(@case, shows.Sign, shows.Occasions));
}
