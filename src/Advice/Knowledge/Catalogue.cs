using System.Collections.Frozen;
using Advice.Knowledge.Checks;
using Advice.Knowledge.Codes;
using Advice.Knowledge.Conditions;
using Advice.Knowledge.Limits;
using Advice.Knowledge.Rules;
using Advice.Knowledge.Signs;
using Advice.Knowledge.Words;

namespace Advice.Knowledge;

/// <summary>All that a rule set says, checked and immutable. Every list is ordered by id unless it has an order of its own.</summary>
public sealed record Catalogue
{
    /// <summary>Systems, in the order of the vocabulary.</summary>
    public required IReadOnlyList<VehicleSystem> Systems { get; init; }

    /// <summary>Occasions by id.</summary>
    public required FrozenDictionary<string, Occasion> Occasions { get; init; }

    /// <summary>Positions by id.</summary>
    public required FrozenDictionary<string, Position> Positions { get; init; }

    /// <summary>Words by which a text shows what it is about.</summary>
    public required IReadOnlyList<Topic> Topics { get; init; }

    /// <summary>Jurisdictions by id.</summary>
    public required FrozenDictionary<string, Jurisdiction> Jurisdictions { get; init; }

    /// <summary>Areas in walking order.</summary>
    public required IReadOnlyList<Area> Areas { get; init; }

    /// <summary>Set-ups in order of work.</summary>
    public required IReadOnlyList<SetUp> SetUps { get; init; }

    /// <summary>Vehicle facts by id.</summary>
    public required FrozenDictionary<string, VehicleFact> Facts { get; init; }

    /// <summary>Symptoms by id.</summary>
    public required FrozenDictionary<string, Symptom> Symptoms { get; init; }

    /// <summary>Trouble codes by id.</summary>
    public required FrozenDictionary<string, TroubleCode> Codes { get; init; }

    /// <summary>Families of trouble codes, the longest beginning first.</summary>
    public required IReadOnlyList<CodeFamily> CodeFamilies { get; init; }

    /// <summary>The families that a trouble code belongs to, the longest beginning first.</summary>
    public IEnumerable<CodeFamily> FamiliesOf(string code) => CodeFamilies.Where(family => code.StartsWith(family.Starts, StringComparison.Ordinal));

    /// <summary>Failure types of trouble codes, the longest beginning first.</summary>
    public required IReadOnlyList<FailureType> FailureTypes { get; init; }

    /// <summary>Faults by id.</summary>
    public required FrozenDictionary<string, Fault> Faults { get; init; }

    /// <summary>Parts by id.</summary>
    public required FrozenDictionary<string, Part> Parts { get; init; }

    /// <summary>The parts that a fault calls for, by fault.</summary>
    public required ILookup<string, Part> PartsByFault { get; init; }

    /// <summary>Checks by id.</summary>
    public required FrozenDictionary<string, Check> Checks { get; init; }

    /// <summary>Cautions by id.</summary>
    public required FrozenDictionary<string, Caution> Cautions { get; init; }

    /// <summary>Service items by id.</summary>
    public required FrozenDictionary<string, ServiceItem> Services { get; init; }

    /// <summary>Limits, by check.</summary>
    public required ILookup<string, Limit> LimitsByCheck { get; init; }

    /// <summary>What verdicts of workshop arithmetic mean, by computation.</summary>
    public required ILookup<string, Meaning> MeaningsByComputation { get; init; }

    /// <summary>The words of the sentences of answers, by id.</summary>
    public required FrozenDictionary<string, Wording> Wordings { get; init; }

    /// <summary>How it is said that a value is beyond its limit.</summary>
    public Text BeyondLimit => Wordings[Sentences.BeyondLimit.Id].Text;

    /// <summary>A sentence of an answer, for that reader.</summary>
    internal string Say(Audience audience, Sentence sentence, params ReadOnlySpan<object?> slots) => Wordings[sentence.Id].For(audience, slots);

    /// <summary>The same of a sentence whose slots are filled already.</summary>
    internal string Say(Audience audience, Saying saying) => Wordings[saying.Sentence.Id].For(audience, [.. saying.Slots]);

    /// <summary>All rules by id.</summary>
    public required FrozenDictionary<string, Rule> Rules { get; init; }

    /// <summary>The checks that detect a fault, by fault.</summary>
    public required ILookup<string, Check> ChecksByFault { get; init; }

    /// <summary>Fits rules that name a fault, by fault.</summary>
    public required ILookup<string, FitsRule> FitsByFault { get; init; }

    /// <summary>Fits rules that name a check, by check.</summary>
    public required ILookup<string, FitsRule> FitsByCheck { get; init; }

    /// <summary>Fits rules that name a service item, by item.</summary>
    public required ILookup<string, FitsRule> FitsByService { get; init; }

    /// <summary>Shows rules, by sign.</summary>
    public required ILookup<Sign, ShowsRule> ShowsBySign { get; init; }

    /// <summary>Shows rules, by fault, what it shows most often first.</summary>
    public required ILookup<string, ShowsRule> ShowsByFault { get; init; }

    /// <summary>Share of vehicles in which listed faults show a sign at base rates, by symptom or code.</summary>
    public required FrozenDictionary<Sign, double> ShownRates { get; init; }

    /// <summary>Probability that a sign is seen without any listed fault, by symptom or code: relative to what the listed faults
    /// cause at their base rates, so that scaling all base rates changes no answer.</summary>
    public required FrozenDictionary<Sign, double> Leaks { get; init; }

    /// <summary>What a <see cref="Symptoms.ComplaintReader"/> learned from these symptoms beforehand; empty where it is still to be learned.</summary>
    public ReadOnlyMemory<byte> Learned { get; init; }

    /// <summary>Overlays over the shipped set, in the order in which they were laid.</summary>
    public IReadOnlyList<Overlay> Overlays { get; init; } = [];

    /// <summary>What came from overlays, by kind and id.</summary>
    public FrozenDictionary<(string Kind, string Id), OverlayEntry> OverlayEntries { get; init; } = FrozenDictionary<(string Kind, string Id), OverlayEntry>.Empty;

    /// <summary>Whether an occasion stated in a report fits one that a rule asks for: the same, wider or narrower.</summary>
    public bool OccasionFits(string stated, string asked) => IsWithin(stated, asked) || IsWithin(asked, stated);

    /// <summary>Whether a report with these stated occasions fits a rule that asks for those; either may be empty. What is not stated
    /// may be so, but for an event: who does not speak of a tyre change is not taken to have had one, and who does has not said when it is noticed.</summary>
    public bool OccasionsFit(IReadOnlyList<string> stated, IReadOnlyList<string> asked)
    {
        if (asked.Count == 0 || (asked.Any(Lasts) && !stated.Any(Lasts)))
            return true;
        foreach (var s in stated)
        {
            foreach (var a in asked)
            {
                if (OccasionFits(s, a))
                    return true;
            }
        }

        return false;
    }

    /// <summary>Whether two positions have a wheel in common.</summary>
    public bool PositionsOverlap(string a, string b) => a == b || Positions[a].Parts.Any(Positions[b].Parts.Contains);

    /// <summary>How surely a check finds a fault on a vehicle that may lack what either needs, 0 … 1.</summary>
    public double Surely(Check check, string fault, Vehicles.Vehicle vehicle) =>
        check.Surely(fault) * VehicleFit.Share(FitsByCheck[check.Id], FitsByFault[fault], vehicle);

    private bool Lasts(string occasion) => !Occasions[occasion].IsEvent;

    private bool IsWithin(string? narrow, string wide)
    {
        for (; narrow is not null; narrow = Occasions[narrow].Within)
        {
            if (narrow == wide)
                return true;
        }

        return false;
    }

    /// <summary>A law and those around it, nearest first; none where none is named.</summary>
    public IEnumerable<string> Laws(string? jurisdiction)
    {
        for (var law = jurisdiction; law is not null; law = Jurisdictions[law].Within)
            yield return law;
    }
}
