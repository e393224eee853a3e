using Advice.Knowledge;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Codes;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;
using Advice.Knowledge.Words;

namespace Advice.Rules.Checking;

/// <summary>One table for each kind of entry.</summary>
internal sealed class Tables
{
    /// <summary>The kinds of rule, which share one table because their ids are unique across kinds.</summary>
    public static readonly string[] RuleKinds = ["shows", "prone", "fits", "implies", "warns", "driving", "normal"];

    public Tables()
    {
        ByKind = new Dictionary<string, IDeclaredIds>(StringComparer.Ordinal)
        {
            ["systems"] = Systems,
            ["sources"] = Sources,
            ["areas"] = Areas,
            ["occasions"] = Occasions,
            ["positions"] = Positions,
            ["topics"] = Topics,
            ["jurisdictions"] = Jurisdictions,
            ["ageing"] = Ageings,
            ["consequences"] = Consequences,
            ["cautions"] = Cautions,
            ["set-ups"] = SetUps,
            ["facts"] = Facts,
            ["symptoms"] = Symptoms,
            ["codes"] = Codes,
            ["code-families"] = CodeFamilies,
            ["failure-types"] = FailureTypes,
            ["faults"] = Faults,
            ["parts"] = Parts,
            ["checks"] = Checks,
            ["limits"] = Limits,
            ["services"] = Services,
            ["meanings"] = Meanings,
            ["wordings"] = Wordings,
        };
        foreach (var kind in RuleKinds)
            ByKind.Add(kind, Rules);
    }

    public Dictionary<string, IDeclaredIds> ByKind { get; }

    private readonly Dictionary<(IDeclaredIds, string), IReadOnlyList<string>> impliedBy = [];

    /// <summary>Words in the method of a check that call for a set-up or caution. They are for the author alone, so no part of the catalogue.</summary>
    public IReadOnlyList<string> ImpliedBy(IDeclaredIds ids, string id) => impliedBy.GetValueOrDefault((ids, id), []);

    /// <summary>Keeps such words.</summary>
    public void AddImpliedBy(IDeclaredIds ids, string id, IReadOnlyList<string> words) => impliedBy.TryAdd((ids, id), words);

    public Table<VehicleSystem> Systems { get; } = new("system");

    public Table<Source> Sources { get; } = new("source");

    public Table<Area> Areas { get; } = new("area");

    public Table<Occasion> Occasions { get; } = new("occasion");

    public Table<Position> Positions { get; } = new("position");

    public Table<Topic> Topics { get; } = new("topic");

    public Table<Jurisdiction> Jurisdictions { get; } = new("jurisdiction");

    public Table<Ageing> Ageings { get; } = new("ageing");

    public Table<Consequence> Consequences { get; } = new("consequence");

    public Table<Caution> Cautions { get; } = new("caution");

    public Table<SetUp> SetUps { get; } = new("set-up");

    public Table<VehicleFact> Facts { get; } = new("vehicle fact");

    public Table<CodeFamily> CodeFamilies { get; } = new("family of codes");

    public Table<FailureType> FailureTypes { get; } = new("failure type");

    public Table<Symptom> Symptoms { get; } = new("symptom");

    public Table<TroubleCode> Codes { get; } = new("trouble code");

    public Table<Fault> Faults { get; } = new("fault");

    public Table<Part> Parts { get; } = new("part");

    public Table<Check> Checks { get; } = new("check");

    public Table<Limit> Limits { get; } = new("limit");

    public Table<ServiceItem> Services { get; } = new("service item");

    public Table<Meaning> Meanings { get; } = new("meaning");

    public Table<Wording> Wordings { get; } = new("wording");

    public Table<Rule> Rules { get; } = new("rule");
}
