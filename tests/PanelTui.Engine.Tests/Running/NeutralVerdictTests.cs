using PanelTui.Engine.Codes;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;

namespace PanelTui.Engine.Tests.Running;

/// <summary>The neutral on standby. The source is a system of its own only where the neutral is switched: trade questions and answers.</summary>
public class NeutralVerdictTests
{
    [Theory]
    [InlineData(false, SourceNeutral.Floating, NeutralBonds.Once)]
    [InlineData(true, SourceNeutral.Bonded, NeutralBonds.Once)]
    [InlineData(false, SourceNeutral.Bonded, NeutralBonds.Twice)]
    [InlineData(true, SourceNeutral.Floating, NeutralBonds.Nowhere)]
    public void Source_and_transfer_equipment_together_tell_how_often_it_is_bonded(bool switches, SourceNeutral neutral, NeutralBonds bonds) =>
        Verdict(switches, neutral).Bonds.ShouldBe(bonds);

    /// <summary>250.30 speaks of separately derived systems alone; 250.24(A)(5) and 250.142(B) of the load side of a service, seen on a tag page of a trade forum.</summary>
    [Theory]
    [InlineData(true, "NEC 2023 250.30(A)(1), from memory")]
    [InlineData(false, "NEC 2023 250.24(A)(5), 250.142(B)")]
    [InlineData(null, null)]
    public void The_bond_of_a_source_that_is_not_separately_derived_is_cited_by_the_sections_on_the_service(bool? switches, string? cite) =>
        Verdict(switches, SourceNeutral.Floating).Section?.In(CodeEdition.Nec2023).ToString().ShouldBe(cite);

    [Theory]
    [InlineData(null, "NEC 2023 250.142(B)")]
    [InlineData("L14-30", "NEC 2023 250.34(A), from memory")]
    public void Without_a_grid_250_30_is_not_cited_either(string? outlet, string cite) =>
        Alone(outlet, SourceNeutral.Floating, null).Section!.In(CodeEdition.Nec2023).ToString().ShouldBe(cite);

    [Theory]
    [InlineData(false, SourceNeutral.Floating, NeutralBonds.Twice)]
    [InlineData(true, SourceNeutral.Bonded, NeutralBonds.Twice)]
    [InlineData(true, SourceNeutral.Floating, NeutralBonds.Once)]
    public void A_bond_in_this_panel_is_counted_and_behind_a_feeder_it_is_one_too_many(bool switches, SourceNeutral neutral, NeutralBonds bonds)
    {
        var verdict = Verdict(switches, neutral, true);
        verdict.Bonds.ShouldBe(bonds);
        verdict.IsPanelBondTooMany.ShouldBeTrue();
    }

    [Fact]
    public void Half_of_it_tells_nothing() => Verdict(null, SourceNeutral.Bonded).Bonds.ShouldBe(NeutralBonds.Unknown);

    /// <summary>The rows of a decision table from trade answers: the electrode column from memory.</summary>
    [Theory]
    [InlineData(null, "one point")]
    [InlineData("L14-30", "as the source's frame was built")]
    public void Without_a_grid_the_source_is_the_only_system_or_feeds_this_panel_by_its_outlet_and_needs_no_sign(string? outlet, string place)
    {
        var verdict = Alone(outlet, SourceNeutral.Bonded, null);
        verdict.Place.ShouldNotBeNull().ShouldContain(place);
        verdict.IsSeparatelyDerived.ShouldBeNull();
        verdict.Sign.ShouldBeNull();
        verdict.Bonds.ShouldBe(NeutralBonds.Once);
    }

    [Theory]
    [InlineData(SourceNeutral.Bonded, true, NeutralBonds.Twice)]
    [InlineData(SourceNeutral.Floating, true, NeutralBonds.Once)]
    [InlineData(SourceNeutral.Floating, false, NeutralBonds.Unknown)]
    public void Off_the_grid_the_bond_of_the_panel_counts(SourceNeutral neutral, bool inPanel, NeutralBonds bonds) =>
        Alone(null, neutral, inPanel).Bonds.ShouldBe(bonds);

    [Fact]
    public void A_normal_supply_without_transfer_equipment_tells_nothing() => NeutralVerdict.Of(Sketch.Of() with
    {
        Transfer = null,
        Feeder = new Feeder { Ocpd = 60.A },
        Source = new StandbySource { Kind = SourceKind.Generator, Neutral = SourceNeutral.Bonded },
    })!.Standing.ShouldBe(SourceStanding.Unknown);

    /// <summary>The wording on training pages of 702.7(C).</summary>
    [Theory]
    [InlineData(true, "WARNING: FOR CONNECTION OF A SEPARATELY DERIVED (BONDED NEUTRAL) SYSTEM ONLY")]
    [InlineData(false, "WARNING: FOR CONNECTION OF A NONSEPARATELY DERIVED (FLOATING NEUTRAL) SYSTEM ONLY")]
    public void One_sign_fits_the_transfer_equipment_whatever_the_source_is(bool switches, string sign) =>
        Verdict(switches, null).Sign.ShouldBe(sign);

    [Fact]
    public void Without_an_inlet_there_is_no_sign() => (Verdict(true, null) with { Source = new() { Kind = SourceKind.Generator } }).Sign.ShouldBeNull();

    private static NeutralVerdict Verdict(bool? switches, SourceNeutral? neutral, bool? inPanel = null)
    {
        var sketch = Sketch.Of();
        return NeutralVerdict.Of(sketch with
        {
            Panel = sketch.Panel with { NeutralBonded = inPanel },
            Transfer = new TransferEquipment { SwitchesNeutral = switches },
            Source = new StandbySource { Kind = SourceKind.Generator, Neutral = neutral, Outlet = "14-50" },
        })!;
    }

    private static NeutralVerdict Alone(string? outlet, SourceNeutral neutral, bool? inPanel)
    {
        var sketch = Sketch.Of();
        return NeutralVerdict.Of(sketch with
        {
            Panel = sketch.Panel with { NeutralBonded = inPanel },
            Transfer = null,
            Feeder = null,
            Source = new StandbySource { Kind = SourceKind.Generator, Neutral = neutral, Outlet = outlet },
        })!;
    }
}
