using Advice.Documents;
using Advice.Documents.Requests;

namespace Advice.Rules.Tests.Overlays;

/// <summary>What an overlay switches off is named, with the reason, in the answers in which it would have had a part, and in no others.</summary>
public class SwitchedOffTests
{
    private const string Shipped = """
        symptoms: [{id: grind, name: grinding, specificity: ordinary, ask: Does it grind?, phrases: [grinds]}]
        codes: [{id: C004A, meaning: pads worn, system: brakes}]
        shows:
          - {id: pads-grind, fault: pads-worn, symptom: grind, often: often, because: Steel on iron., source: judgement}
          - {id: pads-code, fault: pads-worn, code: C004A, often: often, because: The wire wears through., source: judgement}
        prone: [{id: pads-electric, fault: pads-worn, vehicle: {fuel: [electric]}, odds: 0.5, because: The motor brakes., source: judgement}]
        cautions: [{id: smoke, text: Do not breathe smoke., source: judgement}]
        warns: [{id: squeal-smoke, symptom: squeal, caution: smoke}]
        driving: [{id: grind-soon, symptom: grind, advice: soon, because: The disc goes., source: judgement}]
        limits: [{id: pads, check: pad-look, minimum: 3, unit: mm, deficiency: minor, text: at least 3 mm, source: judgement}]
        services:
          - {id: pad-clean, name: clean the pads, system: brakes, because: Dust squeals., intervals: [{km: 10000, source: judgement}]}
        """;

    private const string Battery = """

        checks: [{id: own-battery, title: Measure it., system: brakes, area: wheels, minutes: 5, doneBy: technician, needs: [], method: [Measure.], falseAlarm: 0.05, measures: {unit: V, plausible: [0, 20]}, arithmetic: {computation: battery-state-of-charge, input: voltage}, detects: [{fault: pads-worn, surely: 0.1}], cautions: []}]

        """;

    private const string Meaning = "meanings: [{id: own-low, computation: battery-state-of-charge, verdicts: [recharge, discharged], text: It is low., source: judgement}]";

    private static readonly AdviceRequest Squeal = new() { AsOf = new DateOnly(2026, 3, 1), Vehicle = new() { Fuel = "gasoline" }, Complaint = "it squeals" };
    private static readonly AdviceRequest Grind = Squeal with { Complaint = "it grinds" };
    private static readonly AdviceRequest Electric = Squeal with { Vehicle = new() { Fuel = "electric" } };
    private static readonly AdviceRequest Code = Squeal with { Complaint = null, TroubleCodes = ["C004A"] };
    private static readonly AdviceRequest Worn = Squeal with { Complaint = null, Findings = [new FindingReport { Check = "pad-look", Value = 2, Unit = "mm" }] };
    private static readonly AdviceRequest Driven = Squeal with { Complaint = null, Vehicle = new() { Odometer = new Quantity { Value = 50_000, Unit = "km" } } };

    public static TheoryData<string, string, string, AdviceRequest, AdviceRequest> Marks => new()
    {
        { "shows", "pads-grind", "rule", Grind, Squeal },
        { "shows", "pads-code", "rule", Code, Squeal },
        { "prone", "pads-electric", "rule", Electric, Squeal },
        { "warns", "squeal-smoke", "rule", Squeal, Grind },
        { "driving", "grind-soon", "rule", Grind, Squeal },
        { "limits", "pads", "limit", Worn, Driven },
        { "limits", "pads", "limit", Squeal, Driven },
    };

    [Theory]
    [MemberData(nameof(Marks))]
    public void Answer_SwitchedOffEntry_IsNamedExactlyWhereItWouldHaveCounted(string kind, string id, string noun, AdviceRequest touched, AdviceRequest untouched) =>
        Laid.Over(Shipped, [Off(kind, id)], book =>
        {
            var advice = new GiveAdvice(book, TimeProvider.System);

            Assert.Equal([("ours", noun, id, "Not here.")], advice.To(touched).FromOverlays.Select(entry => (entry.Overlay, entry.Kind, entry.Id, entry.SwitchedOff!)));
            Assert.Equal(["ours"], advice.Triage(touched).Overlays);
            Assert.Single(advice.WhyNot(new WhyNotRequest(touched, "pads-worn", null)).FromOverlays);
            Assert.Empty(advice.To(untouched).FromOverlays);
            Assert.Empty(advice.Triage(untouched).Overlays);
            return 0;
        });

    [Fact]
    public void Judgements_SwitchedOffLimit_IsNamed() => Laid.Over(Shipped, [Off("limits", "pads")], book =>
    {
        var advice = new GiveAdvice(book, TimeProvider.System);

        Assert.Equal("pads", Assert.Single(advice.Judge(Worn).FromOverlays).Id);
        Assert.Empty(advice.Judge(Squeal).FromOverlays);
        return 0;
    });

    [Theory]
    [InlineData("shows", "pads-grind")]
    [InlineData("driving", "grind-soon")]
    public void Intake_SwitchedOffEntry_IsNamedWhereItWouldHaveHadAPart(string kind, string id) => Laid.Over(Shipped, [Off(kind, id)], book =>
    {
        var advice = new GiveAdvice(book, TimeProvider.System);

        Assert.Equal(("rule", id), Assert.Single(advice.Intake(Grind).FromOverlays.Select(entry => (entry.Kind, entry.Id))));
        Assert.Empty(advice.Intake(Squeal).FromOverlays);
        return 0;
    });

    [Fact]
    public void Intake_EntriesThatAnOverlayAdded_AreNamedWhereTheyWereRead()
    {
        const string Own = """
            symptoms: [{id: hum, name: hum, specificity: ordinary, ask: Does it hum?, phrases: [hums]}]
            services: [{id: own-wash, name: our wash, system: brakes, phrases: [own wash], because: Dust squeals., intervals: [{km: 1000, source: judgement}]}]
            shows: [{id: own-hum, fault: pads-worn, symptom: hum, often: often, because: It sings., source: judgement}]
            """;
        Laid.Over(Shipped, [(Laid.Name, Own)], book =>
        {
            var advice = new GiveAdvice(book, TimeProvider.System);
            var read = advice.Intake(Squeal with { Complaint = "It hums. The own wash was done last week." });

            Assert.Equal(["own-hum", "own-wash", "hum"], read.FromOverlays.Select(entry => entry.Id));
            Assert.Empty(advice.Intake(Squeal).FromOverlays);
            return 0;
        });
    }

    [Theory]
    [InlineData("replaces: [{kind: limits, id: pads}]", "limits: [{id: pads, check: pad-look, minimum: 4, unit: mm, deficiency: minor, text: at least 4 mm, source: judgement}]", false)]
    [InlineData("off: [{kind: limits, id: pads, because: Not here.}]", "", true)]
    public void Projection_LimitOfAnOverlay_IsNamedUnlessTheCallerGivesOne(string marks, string own, bool off) => Laid.Over(Shipped, [(Laid.Name + marks, own)], book =>
    {
        var advice = new GiveAdvice(book, TimeProvider.System);
        var asked = new ProjectionRequest { Check = "pad-look", Measurements = [At(10_000, 8), At(20_000, 7), At(30_000, 6)] };

        var entry = Assert.Single(advice.Project(asked).FromOverlays);
        Assert.Equal(("limit", "pads", off), (entry.Kind, entry.Id, entry.SwitchedOff is not null));
        Assert.Empty(advice.Project(asked with { Limit = new SuppliedLimit { Minimum = 3, Unit = "mm" } }).FromOverlays);
        return 0;

        static MeasurementReport At(double km, double value) => new() { Value = value, Unit = "mm", On = new DateOnly(2025, 1, 1).AddDays((int)(km / 100)), Odometer = new Quantity { Value = km, Unit = "km" } };
    });

    /// <summary>What stands behind an answer without being a rule of it: how a fault ages, what it leads to, what a verdict of arithmetic means.</summary>
    [Theory]
    [InlineData("ageing", "ageing", "steady", "ageing: [{id: steady, name: steady, odometerKm: [[0, 1], [100000, 2]], source: judgement}]")]
    [InlineData("consequences", "consequence", "nuisance", "consequences: [{id: nuisance, name: nuisance, harm: 2, source: judgement}]")]
    [InlineData("occasions", "occasion", "braking", "occasions: [{id: braking, name: braking, phrases: [when braking, when i brake]}]")]
    [InlineData("areas", "area", "wheels", "areas: [{id: wheels, name: the wheels}]")]
    [InlineData("meanings", "meaning", "own-low", Meaning)]
    [InlineData("meanings", "meaning", "own-low", "")]
    public void Advice_EntryBehindIt_IsNamedWhereItHadAPart(string kind, string noun, string id, string own)
    {
        var off = own.Length == 0;
        Laid.Over(Shipped + Battery + Meaning, [off ? Off(kind, id) : ($"{Laid.Name}replaces: [{{kind: {kind}, id: {id}}}]", own)], book =>
        {
            var advice = new GiveAdvice(book, TimeProvider.System);
            var asked = Squeal with { Complaint = "it squeals when braking", Findings = [new FindingReport { Check = "own-battery", Value = 12.1, Unit = "V" }] };

            Assert.Contains((noun, id, off), advice.To(asked).FromOverlays.Select(entry => (entry.Kind, entry.Id, entry.SwitchedOff is not null)));
            Assert.Empty(advice.To(Driven).FromOverlays);
            Assert.Empty(advice.Reckon(asked).FromOverlays);
            return 0;
        });
    }

    [Fact]
    public void Due_SwitchedOffItem_IsNamed() => Laid.Over(Shipped, [Off("services", "pad-clean")], book =>
    {
        var advice = new GiveAdvice(book, TimeProvider.System);

        Assert.Equal("pad-clean", Assert.Single(advice.Reckon(Driven).FromOverlays).Id);
        Assert.Equal("pad-clean", Assert.Single(advice.Inspect(Driven).FromOverlays).Id);
        return 0;
    });

    [Fact]
    public void Triage_EntryThatAnOverlayAdded_NamesTheOverlayWhereItCounts()
    {
        const string Own = "prone: [{id: own-pads, fault: pads-worn, odds: 2, because: Hills., vehicle: {fuel: [gasoline]}, source: judgement}]";
        Laid.Over(Shipped, [(Laid.Name, Own)], book =>
        {
            var advice = new GiveAdvice(book, TimeProvider.System);

            Assert.Equal(["ours"], advice.Triage(Squeal).Overlays);
            Assert.Empty(advice.Triage(Electric).Overlays);
            return 0;
        });
    }

    /// <summary>What a lower overlay added and one above it takes away is named by the one above.</summary>
    [Fact]
    public void Answer_EntryOfALowerOverlaySwitchedOff_IsNamed()
    {
        const string Own = "prone: [{id: own-pads, fault: pads-worn, odds: 2, because: Hills., vehicle: {fuel: [gasoline]}, source: judgement}]";
        Laid.Over(Shipped, [(Laid.Name, Own), ("name: above\ntitle: t\noff: [{kind: prone, id: own-pads, because: No hills.}]", "")], book =>
        {
            var entry = Assert.Single(new GiveAdvice(book, TimeProvider.System).To(Squeal).FromOverlays);

            Assert.Equal(("above", "own-pads", "No hills."), (entry.Overlay, entry.Id, entry.SwitchedOff));
            return 0;
        });
    }

    private static (string Manifest, string Own) Off(string kind, string id) => ($"{Laid.Name}off: [{{kind: {kind}, id: {id}, because: Not here.}}]", "");
}
