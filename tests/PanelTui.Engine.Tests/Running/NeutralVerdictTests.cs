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

    private static NeutralVerdict Verdict(bool? switches, SourceNeutral? neutral) => NeutralVerdict.Of(Sketch.Of() with
    {
        Transfer = new TransferEquipment { SwitchesNeutral = switches },
        Source = new StandbySource { Kind = SourceKind.Generator, Neutral = neutral, Outlet = "14-50" },
    })!;

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
