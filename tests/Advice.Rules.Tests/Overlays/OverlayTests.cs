using Advice.Rules.RuleSets;

namespace Advice.Rules.Tests.Overlays;

/// <summary>Overlays add, replace and switch off, and whatever is wrong with them is named at its place.</summary>
public class OverlayTests
{
    private const string Smoke = "cautions: [{id: smoke, text: Do not breathe smoke., source: judgement}]\nwarns: [{id: squeal-smoke, symptom: squeal, caution: smoke}]\n";
    private const string Minimum = "limits: [{id: pads, check: pad-look, minimum: 3, unit: mm, deficiency: major, text: at least 3 mm, source: judgement}]\n";
    private const string Link = "shows: [{id: pads-squeal, fault: pads-worn, symptom: squeal, often: rarely, because: It rubs., source: judgement}]\n";

    [Theory]
    [InlineData("replaces: [{kind: cautions, id: brake-dsut}]", "", "overlay.yaml(3,33): error unknown-id: below this overlay there is no caution 'brake-dsut' under 'cautions'; did you mean 'brake-dust'?")]
    [InlineData("off: [{kind: shows, id: pads-squeel, because: no}]", "", "overlay.yaml(3,25): error unknown-id: below this overlay there is no rule 'pads-squeel' under 'shows'; did you mean 'pads-squeal'?")]
    [InlineData("replaces: [{kind: shows, id: pads-squeal}]", "", "overlay.yaml(3,30): error missing-member: this overlay has no rule 'pads-squeal' to put in the place of the one below; to take it away name it under 'off'")]
    [InlineData("off: [{kind: shows, id: pads-squeal, because: no}]", Link, "overlay.yaml(3,25): error contradiction: the rule 'pads-squeal' is switched off and written anew; name it under 'replaces' instead")]
    [InlineData("off: [{kind: shows, id: pads-squeal}]", "", "overlay.yaml(3,7): error missing-member: 'because' is missing from this mark under 'off'")]
    [InlineData("off: [{kind: shows, id: pads-squeal, because: ''}]", "", "overlay.yaml(3,47): error wrong-shape: 'because' must be a word or text, not nothing")]
    [InlineData("off: [{kind: symptoms, id: squeal, because: no}]", "", "overlay.yaml(3,28): error still-needed: the symptom 'squeal' cannot be switched off while others name it: shows 'pads-squeal' (words.yaml line 13); switch them off or replace them too")]
    [InlineData("off: [{kind: shows, id: pads-squeal, because: no}, {kind: shows, id: pads-squeal, because: no}]", "", "overlay.yaml(3,70): error repeated-word: the rule 'pads-squeal' is named twice in this overlay")]
    [InlineData("off: none", "", "overlay.yaml(3,6): error wrong-shape: 'off' must be a list, not 'none'")]
    [InlineData("replaces: [pads-squeal]", "", "overlay.yaml(3,12): error wrong-shape: what stands under 'replaces' must be a mapping with 'kind' and 'id', not 'pads-squeal'")]
    [InlineData("", Link, "own.yaml(1,14): error id-taken: the rule 'pads-squeal' is already in words.yaml line 13; ids are unique")]
    [InlineData("", "shows: [{id: new, fault: pads-wron, symptom: squeal, often: rarely, because: So., source: judgement}]", "own.yaml(1,26): error unknown-id: unknown fault 'pads-wron'; did you mean 'pads-worn'?")]
    public void Overlay_Faulty_IsNamedAtItsPlace(string marks, string own, string says) => Assert.Equal([says], Laid.Says(Laid.Name + marks, own));

    [Theory]
    [InlineData("", "", "overlay.yaml(1,1): error missing-member: 'name' is missing from this overlay")]
    [InlineData("name: Ours\ntitle: t", "", "overlay.yaml(1,7): error malformed-id: the name 'Ours' must be lower-case words joined by hyphens")]
    public void Overlay_WithoutAName_IsRefused(string manifest, string own, string says) => Assert.Contains(says, Laid.Says(manifest, own));

    [Theory]
    [InlineData(Smoke, "off: [{kind: cautions, id: smoke, because: no}, {kind: warns, id: squeal-smoke, because: no}]", "", 2)]
    [InlineData(Smoke, "off: [{kind: warns, id: squeal-smoke, because: no}]", "codes: []", 1)]
    [InlineData(Minimum, "replaces: [{kind: limits, id: pads}]", "limits: [{id: pads, check: pad-look, minimum: 2, unit: mm, deficiency: major, text: at least 2 mm, source: judgement}]", 1)]
    [InlineData(Minimum, "replaces: [{kind: limits, id: pads}]", "limits: [{id: pads, check: pad-look, minimum: 4, unit: mm, deficiency: major, text: at least 4 mm, source: judgement}]", 0)]
    [InlineData(Minimum, "off: [{kind: limits, id: pads, because: no}]", "", 1)]
    [InlineData("", "replaces: [{kind: cautions, id: brake-dust}]", "cautions: [{id: brake-dust, text: Wear a mask., source: judgement}]", 1)]
    [InlineData("", "replaces: [{kind: checks, id: pad-look}]", "checks: [{id: pad-look, title: Look., system: brakes, area: wheels, minutes: 5, doneBy: owner, needs: [], method: [Look.], falseAlarm: 0.05, measures: {unit: mm, plausible: [0, 30]}, detects: [{fault: pads-worn, surely: 0.9}], cautions: []}]", 1)]
    [InlineData("", "", Smoke, 0)]
    public void Overlay_ThatTakesProtectionAway_Warns(string shipped, string marks, string own, int warnings)
    {
        var said = Laid.Says(Laid.Name + marks, own, shipped);

        Assert.Equal(warnings, said.Count);
        Assert.All(said, warning => Assert.Contains("warning caution-changed", warning, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("off: [{kind: limits, id: pads, because: We use our own.}]", "", "overlay.yaml(3,26): warning caution-changed: 'pads' under 'limits' protects people and is switched off: We use our own.")]
    [InlineData("replaces: [{kind: limits, id: pads}]", "limits: [{id: pads, check: pad-look, minimum: 2, unit: mm, deficiency: major, text: at least 2 mm, source: judgement}]", "own.yaml(1,15): warning caution-changed: the limit 'pads' passes what the one in its place did not")]
    [InlineData("replaces: [{kind: checks, id: pad-look}]", "checks: [{id: pad-look, title: Look., system: brakes, area: wheels, minutes: 5, doneBy: owner, needs: [], method: [Look.], falseAlarm: 0.05, measures: {unit: mm, plausible: [0, 30]}, detects: [{fault: pads-worn, surely: 0.9}], cautions: []}]", "own.yaml(1,15): warning caution-changed: the check 'pad-look' no longer carries 'brake-dust'")]
    public void Overlay_ThatTakesProtectionAway_SaysWhatToTheLetter(string marks, string own, string says) => Assert.Equal([says], Laid.Says(Laid.Name + marks, own, Minimum));

    [Fact]
    public void Overlay_Replaces_TakesThePlaceAndIsNamed()
    {
        var book = Laid.Over("", [($"{Laid.Name}replaces: [{{kind: shows, id: pads-squeal}}]", Link)], book => book);

        Assert.Equal(0.05, Assert.IsType<Knowledge.Rules.ShowsRule>(book.Catalogue.Rules["pads-squeal"]).Often);
        Assert.Equal("ours", book.Catalogue.OverlayEntries[("rule", "pads-squeal")].Overlay);
        Assert.Equal(["ours"], book.Catalogue.Overlays.Select(overlay => overlay.Name));
    }

    [Fact]
    public void Overlay_Off_IsGone()
    {
        var book = Laid.Over(Minimum, [($"{Laid.Name}off: [{{kind: limits, id: pads, because: no}}]", "")], book => book);

        Assert.Empty(book.Catalogue.LimitsByCheck["pad-look"]);
        Assert.Empty(book.Catalogue.OverlayEntries);
    }

    [Fact]
    public void Overlays_LaterLiesAbove()
    {
        const string Again = "name: above\ntitle: t\nreplaces: [{kind: cautions, id: smoke}]";
        var book = Laid.Over("", [(Laid.Name, Smoke), (Again, "cautions: [{id: smoke, text: Keep away., source: judgement}]")], book => book);

        Assert.Equal("Keep away.", book.Catalogue.Cautions["smoke"].Text.Trade);
        Assert.Equal("above", book.Catalogue.OverlayEntries[("caution", "smoke")].Overlay);
        Assert.Equal("ours", book.Catalogue.OverlayEntries[("rule", "squeal-smoke")].Overlay);
    }

    [Fact]
    public void Overlays_OfOneName_AreRefused() =>
        Assert.Contains("another overlay is named 'ours' already", Assert.Throws<RuleSetException>(() => Laid.Over("", [(Laid.Name, ""), (Laid.Name, "")], book => book)).Message, StringComparison.Ordinal);

    [Fact]
    public void Revision_CoversOverlaysAndTheirOrder()
    {
        var (one, other) = ((Laid.Name, ""), ("name: other\ntitle: t", ""));
        string Revision(params (string, string)[] overlays) => Laid.Over("", overlays, book => book.Revision);

        Assert.Equal(Revision(one, other), Revision(one, other));
        Assert.Equal(5, new[] { Revision(), Revision(one), Revision(other), Revision(one, other), Revision(other, one) }.Distinct().Count());
    }

    [Fact]
    public void Folder_WithoutManifest_SaysWhatIsMissing()
    {
        var broken = Assert.Throws<RuleSetException>(() => RuleSetLoader.Load(RepositoryRules.Directory, [Path.Combine(RepositoryRules.Directory, "belts")]));

        Assert.Contains("an overlay needs this file with its 'name' and 'title'", Assert.Single(broken.Errors).Message, StringComparison.Ordinal);
    }
}
