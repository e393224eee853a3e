using Advice.Documents;

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
