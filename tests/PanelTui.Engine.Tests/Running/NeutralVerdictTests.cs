using PanelTui.Engine.Panels;
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
}
