using Advice.Arithmetic;
using Advice.Documents;
using Advice.Documents.Judgements;
using Advice.Documents.Requests;

namespace Advice.Rules.Tests.Overlays;

/// <summary>What a text says in words that an overlay switches off is named; words that an overlay adds do not trouble the rules below it.</summary>
public class WordsSwitchedOffTests
{
    private const string Shipped = """
        occasions: [{id: reversing, name: reversing, phrases: [when reversing]}]
        symptoms: [{id: grind, name: grinding, specificity: ordinary, ask: Does it grind?, phrases: [grinds]}]
        shows: [{id: pads-grind, fault: pads-worn, symptom: grind, often: often, because: Steel on iron., source: judgement}]
        services:
          - {id: pad-clean, name: clean the pads, system: brakes, phrases: [pad cleaning], because: Dust squeals., intervals: [{km: 10000, source: judgement}]}
        meanings: [{id: own-low, computation: battery-state-of-charge, verdicts: [discharged], text: It is low., source: judgement}]
        """;

    private const string NoGrinding = Laid.Name + "off: [{kind: symptoms, id: grind, because: No.}, {kind: shows, id: pads-grind, because: No.}]";

    private static readonly AdviceRequest Squeal = new() { AsOf = new DateOnly(2026, 3, 1), Vehicle = new() { Odometer = new Quantity { Value = 50_000, Unit = "km" } }, Complaint = "it squeals" };

    [Fact]
    public void Answer_SymptomSwitchedOff_IsNamedWhereTheTextReportsIt() => Over(NoGrinding, advice =>
    {
        var grinds = Squeal with { Complaint = "it grinds" };

        Assert.Equal(["rule pads-grind", "symptom grind"], Named(advice.To(grinds).FromOverlays));
        Assert.Equal(["rule pads-grind", "symptom grind"], Named(advice.Intake(grinds).FromOverlays));
        Assert.Equal(["ours"], advice.Triage(grinds).Overlays);
        Assert.Equal(["it grinds"], advice.To(grinds).Understood.NotUnderstood);
        Assert.Empty(advice.To(Squeal).FromOverlays);
        Assert.Empty(advice.Triage(Squeal).Overlays);
    });

    [Fact]
    public void Answer_OccasionSwitchedOff_IsNamedWhereTheTextStatesIt() => Over($"{Laid.Name}off: [{{kind: occasions, id: reversing, because: No.}}]", advice =>
    {
        Assert.Equal(["occasion reversing"], Named(advice.To(Squeal with { Complaint = "it squeals when reversing" }).FromOverlays));
        Assert.Empty(advice.To(Squeal with { Complaint = "it squeals when braking" }).FromOverlays);
    });

    [Fact]
    public void Answer_ServiceSwitchedOff_IsNamedWhereItWouldHaveBeenReadOrDue() => Over($"{Laid.Name}off: [{{kind: services, id: pad-clean, because: No.}}]", advice =>
    {
        var cleaned = Squeal with { Complaint = "The pad cleaning was done 15000 km ago." };

        Assert.Equal(["service item pad-clean"], Named(advice.Intake(cleaned).FromOverlays));
        Assert.Equal(["service item pad-clean"], Named(advice.To(cleaned).FromOverlays));
        Assert.Empty(advice.To(Squeal with { Complaint = "The pad cleaning was done 1000 km ago." }).FromOverlays);
        Assert.Empty(advice.Intake(Squeal).FromOverlays);
    });

    /// <summary>The rules below know neither the occasion, the place nor the law of which the request speaks.</summary>
    [Fact]
    public void Answer_WordsThatTheOverlayAdds_AreNothingToTheRulesBelow()
    {
        const string Own = """
            occasions: [{id: hill, name: hills, phrases: [uphill]}]
            positions: [{id: rear-left, parts: [rear-left], phrases: [rear left]}]
            jurisdictions: [{id: XX, name: our yard}]
            limits: [{id: own-pads, check: pad-look, minimum: 3, unit: mm, jurisdiction: XX, deficiency: minor, text: at least 3 mm, source: judgement}]
            shows: [{id: own-hill, fault: pads-worn, symptom: squeal, occasions: [hill], often: often, because: It pulls., source: judgement}]
            """;
        Laid.Over(Shipped, [(NoGrinding, Own)], book =>
        {
            var advice = new GiveAdvice(book, TimeProvider.System);
            var asked = Squeal with
            {
                Jurisdiction = "XX",
                Complaint = "it squeals uphill at the rear left and it grinds",
                Findings = [new FindingReport { Check = "pad-look", Position = "rear-left", Value = 2, Unit = "mm" }],
            };

            var named = Named(advice.To(asked).FromOverlays);
            Assert.Contains("rule own-hill", named);
            Assert.Contains("symptom grind", named);
            Assert.NotNull(advice.Reckon(asked));
            return 0;
        });
    }

    [Theory]
    [InlineData("off: [{kind: meanings, id: own-low, because: No.}]", "", true)]
    [InlineData("replaces: [{kind: meanings, id: own-low}]", "meanings: [{id: own-low, computation: battery-state-of-charge, verdicts: [discharged], text: It is empty., source: judgement}]", false)]
    public void Arithmetic_MeaningOfAnOverlay_IsNamedWhereTheVerdictHasIt(string marks, string own, bool off) => Laid.Over(Shipped, [(Laid.Name + marks, own)], book =>
    {
        var advice = new GiveAdvice(book, TimeProvider.System);

        var entry = Assert.Single(Measured(11.5).FromOverlays);
        Assert.Equal(("ours", "meaning", "own-low", off), (entry.Overlay, entry.Kind, entry.Id, entry.SwitchedOff is not null));
        Assert.Equal(["ours"], Measured(12.7).RuleSet.Overlays.Select(overlay => overlay.Name));
        Assert.Empty(Measured(12.7).FromOverlays);
        return 0;

        ComputationAnswer Measured(double volts)
        {
            var computation = Computations.Find("battery-state-of-charge")!;
            var voltage = computation.Inputs.Single(input => input.Name == "voltage");
            return advice.Explain(computation, computation.Compute(new Given(new Dictionary<Input, object> { [voltage] = volts })));
        }
    });

    private static void Over(string manifest, Action<GiveAdvice> then) => Laid.Over(Shipped, [(manifest, "")], book =>
    {
        then(new GiveAdvice(book, TimeProvider.System));
        return 0;
    });

    private static IEnumerable<string> Named(IEnumerable<Knowledge.OverlayEntry> entries) => entries.Select(entry => $"{entry.Kind} {entry.Id}");
}
