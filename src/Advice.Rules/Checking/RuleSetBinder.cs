using Advice.Knowledge;
using Advice.Knowledge.Codes;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;
using Advice.Rules.Files;

namespace Advice.Rules.Checking;

/// <summary>Binds the files of a rule set to a catalogue.</summary>
internal static class RuleSetBinder
{
    /// <summary>The catalogue; null where anything is wrong.</summary>
    /// <param name="files">The files.</param>
    /// <param name="tables">Empty tables, which take the entries with their places.</param>
    /// <param name="problems">Where to note errors.</param>
    public static Catalogue? Bind(IEnumerable<MappingNode> files, Tables tables, Problems problems)
    {
        var declared = new Declarations(tables, problems);
        foreach (var file in files)
            declared.Add(file);

        var sources = new SourceBinder(tables, problems);
        var conditions = new ConditionBinder(tables, problems);
        sources.BindAll(declared["sources"]);
        new FactBinder(tables, sources, problems).BindAll(declared["facts"]);
        new VocabularyBinder(tables, sources, conditions, problems).BindAll(declared);
        new SignBinder(tables, sources, problems).BindAll(declared);
        new FaultBinder(tables, sources, problems).BindAll(declared["faults"]);
        new PartBinder(tables, problems).BindAll(declared["parts"]);
        new CheckBinder(tables, sources, problems).BindAll(declared["checks"]);
        new LimitBinder(tables, sources, conditions, problems).BindAll(declared["limits"]);
        new ServiceBinder(tables, sources, conditions, problems).BindAll(declared["services"]);
        new MeaningBinder(tables, sources, problems).BindAll(declared["meanings"]);
        new WordingBinder(tables, sources, problems).BindAll(declared["wordings"]);
        new RuleBinder(tables, sources, conditions, problems).BindAll(declared);
        if (!problems.AreRuledOut)
            new Consistency(tables, problems).Check();
        return problems.None ? Catalogue(tables) : null;
    }

    private static Catalogue Catalogue(Tables tables)
    {
        var rules = tables.Rules.Bound.OrderBy(rule => rule.Id, StringComparer.Ordinal).ToList();
        var checks = tables.Checks.Bound.OrderBy(check => check.Id, StringComparer.Ordinal).ToList();
        var fits = rules.OfType<FitsRule>().ToList();
        var shows = rules.OfType<ShowsRule>().ToList();
        var bySign = shows.ToLookup(rule => rule.Sign);
        var faults = tables.Faults.Freeze();
        var symptoms = tables.Symptoms.Freeze();
        var rates = SignRates.Shown(tables.Symptoms.Bound, tables.Codes.Bound, faults, bySign);
        return new Catalogue
        {
            Systems = [.. tables.Systems.Bound],
            Occasions = tables.Occasions.Freeze(),
            Positions = tables.Positions.Freeze(),
            Topics = [.. tables.Topics.Bound.OrderBy(topic => topic.Id, StringComparer.Ordinal)],
            Jurisdictions = tables.Jurisdictions.Freeze(),
            Areas = [.. tables.Areas.Bound],
            SetUps = [.. tables.SetUps.Bound.OrderBy(setUp => setUp.Order).ThenBy(setUp => setUp.Id, StringComparer.Ordinal)],
            Facts = tables.Facts.Freeze(),
            Symptoms = symptoms,
            Codes = tables.Codes.Freeze(),
            CodeFamilies = [.. tables.CodeFamilies.Bound.OrderByDescending(family => family.Starts.Length).ThenBy(family => family.Starts, StringComparer.Ordinal)],
            FailureTypes = [.. tables.FailureTypes.Bound.OrderByDescending(type => type.Starts.Length).ThenBy(type => type.Starts, StringComparer.Ordinal)],
            Faults = faults,
            Parts = tables.Parts.Freeze(),
            PartsByFault = tables.Parts.Bound.OrderBy(part => part.Id, StringComparer.Ordinal).SelectMany(part => part.Faults, (part, fault) => (part, fault))
                .ToLookup(pair => pair.fault, pair => pair.part),
            Checks = tables.Checks.Freeze(),
            Cautions = tables.Cautions.Freeze(),
            Services = tables.Services.Freeze(),
            LimitsByCheck = tables.Limits.Bound.OrderBy(limit => limit.Id, StringComparer.Ordinal).ToLookup(limit => limit.Check),
            MeaningsByComputation = tables.Meanings.Bound.OrderBy(meaning => meaning.Id, StringComparer.Ordinal).ToLookup(meaning => meaning.Computation),
            Wordings = tables.Wordings.Freeze(),
            Rules = tables.Rules.Freeze(),
            ChecksByFault = checks.SelectMany(check => check.Detects.Select(d => d.Fault).Distinct(), (check, fault) => (check, fault))
                .ToLookup(pair => pair.fault, pair => pair.check),
            FitsByFault = By(fits, rule => rule.Faults),
            FitsByCheck = By(fits, rule => rule.Checks),
            FitsByService = By(fits, rule => rule.Services),
            ShowsBySign = bySign,
            ShowsByFault = MostOftenFirst(shows),
            ShownRates = rates,
            Leaks = SignRates.Leaks(rates, sign => sign.Kind == SignKind.Code ? TroubleCode.UnexplainedShare : symptoms[sign.Id].UnexplainedShare),
        };
    }

    /// <summary>Shows rules by fault, as the catalogue has them.</summary>
    public static ILookup<string, ShowsRule> MostOftenFirst(IEnumerable<ShowsRule> shows) =>
        shows.OrderByDescending(rule => rule.Often).ThenBy(rule => rule.Id, StringComparer.Ordinal).ToLookup(rule => rule.Fault);

    private static ILookup<string, FitsRule> By(IEnumerable<FitsRule> fits, Func<FitsRule, IEnumerable<string>> named) =>
        fits.SelectMany(named, (rule, id) => (rule, id)).ToLookup(pair => pair.id, pair => pair.rule);
}
