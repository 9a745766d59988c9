using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Rules;

/// <summary>The standby source, the transfer equipment, and what runs on them.</summary>
public class StandbyRuleTests
{
    [Fact]
    public void Transfer_equipment_below_the_worst_leg_is_reported()
    {
        Transferred(stated: 60, load: 60).ShouldPass("transfer-equipment-too-small");
        Transferred(stated: 60, load: 61).ShouldBreak(
            "transfer-equipment-too-small", "The transfer equipment is rated 60 A; the worst leg asks for 61.0 A.");
    }

    [Theory]
    [InlineData(70, 0, "the device ahead on the normal supply is 70.0 A")]
    [InlineData(0, 70, "the device ahead on the standby supply is 70.0 A")]
    public void Transfer_equipment_below_a_device_ahead_is_reported(int feeder, int source, string reason) =>
        Transferred(stated: 60, load: 20, feeder, source).ShouldBreak(
            "transfer-equipment-too-small", $"The transfer equipment is rated 60 A; {reason}.");

    [Fact]
    public void A_leg_above_its_share_of_the_source_is_reported()
    {
        Running(6000, Sketch.OnePole(1, Sketch.Of(3000.W))).ShouldPass("source-leg-overloaded");
        Running(6000, Sketch.OnePole(1, Sketch.Of(3100.W))).ShouldBreak(
            "source-leg-overloaded", "Night runs 3100 W on leg A; the source gives 3000 W there.");
    }

    [Fact]
    public void Legs_that_hold_but_ask_for_too_much_in_all_are_reported()
    {
        var source = new StandbySource
        {
            Kind = SourceKind.Generator, Continuous = 5000.W, ContinuousPerLeg = 3000.W,
        };
        On(source, Sketch.OnePole(1, Sketch.Of(2600.W)), Sketch.OnePole(3, Sketch.Of(2600.W))).ShouldBreak(
            "source-leg-overloaded", "Night runs 5200 W; the source gives 5000 W in all.");
    }

    [Fact]
    public void A_scenario_above_the_sources_breaker_is_reported()
    {
        var source = new StandbySource { Kind = SourceKind.Generator, Ocpd = 30.A };
        On(source, Sketch.OnePole(1, Sketch.Of(30.A))).ShouldPass("source-device-below-scenario");
        On(source, Sketch.OnePole(1, Sketch.Of(31.A))).ShouldBreak(
            "source-device-below-scenario", "Night draws 31.0 A on leg A; the source's breaker is 30 A.");
    }

    [Fact]
    public void One_pole_in_phase_carries_all_legs_together()
    {
        var source = new StandbySource
        {
            Kind = SourceKind.Inverters, Ocpd = 30.A, Arrangement = SourceArrangement.InPhase,
        };
        On(source, Sketch.OnePole(1, Sketch.Of(20.A)), Sketch.OnePole(3, Sketch.Of(11.A))).ShouldBreak(
            "source-device-below-scenario", "Night draws 31.0 A on all legs together; the source's breaker is 30 A.");
    }

    /// <summary>D16: 710.15(C), seen in a mirror of the code text: no 240 V outlets on one 120 V unit.</summary>
    [Fact]
    public void A_240_V_load_on_one_120_V_unit_is_reported() =>
        Arranged(SourceArrangement.InPhase, Sketch.TwoPole(1, Sketch.Of(900.VA))).ShouldBreak(
            "line-to-line-load-on-one-leg-source",
            "Circuit 1 at space 1 has a load from line to line; one 120 V unit on both legs leaves 0 V between them.");

    [Theory]
    [InlineData(SourceArrangement.Split)]
    [InlineData(SourceArrangement.OneUnit)]
    public void A_240_V_load_on_a_120_240_V_source_passes(SourceArrangement arrangement) =>
        Arranged(arrangement, Sketch.TwoPole(1, Sketch.Of(900.VA))).ShouldPass("line-to-line-load-on-one-leg-source");

    [Fact]
    public void A_120_V_load_on_one_120_V_unit_passes() =>
        Arranged(SourceArrangement.InPhase, Sketch.OnePole(1, Sketch.Of(900.VA)))
            .ShouldPass("line-to-line-load-on-one-leg-source");

    private static Schedule Running(int watts, params ReadOnlySpan<Circuit> circuits) =>
        On(new StandbySource { Kind = SourceKind.Generator, Continuous = watts.W }, circuits);

    private static Schedule Arranged(SourceArrangement arrangement, Circuit circuit) =>
        On(new StandbySource { Kind = SourceKind.Inverters, Arrangement = arrangement }, circuit);

    private static Schedule On(StandbySource source, params ReadOnlySpan<Circuit> circuits) =>
        (Sketch.Of(circuits) with { Source = source }).With(new Scenario { Name = "Night", RunsAll = true });

    private static Schedule Transferred(int stated, int load, int feeder = 0, int source = 0) =>
        Sketch.Of(Sketch.TwoPole(1, Sketch.Of(load.A))) with
        {
            Transfer = new TransferEquipment { Rating = stated.A },
            Feeder = new Feeder { Ocpd = feeder.A },
            Source = new StandbySource { Kind = SourceKind.Generator, Ocpd = source.A },
        };
}
