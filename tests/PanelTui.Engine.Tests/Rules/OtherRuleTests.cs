using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Rules;

namespace PanelTui.Engine.Tests.Rules;

/// <summary>Bonding, methods that are not there yet, motors that no table reaches.</summary>
public class OtherRuleTests
{
    [Theory]
    [InlineData(null)]
    [InlineData(false)]
    public void A_neutral_that_is_not_bonded_passes(bool? bonded) =>
        Bonded(bonded).ShouldPass("neutral-bonded-in-subpanel");

    [Fact]
    public void A_neutral_bonded_in_a_subpanel_is_reported() =>
        Bonded(true).ShouldBreak(
            "neutral-bonded-in-subpanel", "The neutral is bonded to ground in this panel, which a feeder supplies.");

    [Fact]
    public void A_method_that_is_not_there_yet_is_noted_by_name()
    {
        var schedule = Sketch.Of().By(DemandMethodName.DwellingOptional);
        schedule.ShouldBreak(
            "demand-method-not-yet",
            "Demand method dwelling-optional is not worked out yet: demand, feeder and transfer ratings are left out.");
        Judge.Findings(schedule, "demand-method-not-yet").Single().Severity.ShouldBe(Severity.Note);
    }

    [Fact]
    public void A_method_that_is_there_is_not_noted() =>
        Sketch.Of().By(DemandMethodName.NonDwelling).ShouldPass("demand-method-not-yet");

    [Fact]
    public void A_motor_above_its_table_is_reported_for_it_counts_nothing() =>
        Sketch.Of(Sketch.TwoPole(1, Sketch.Of(15.Hp))).ShouldBreak(
            "motor-outside-table",
            "Circuit 1 at space 1 has a motor of 15 hp, above the end of Table 430.248: it counts for nothing in every figure.");

    [Fact]
    public void A_motor_in_its_table_passes()
    {
        Sketch.Of(Sketch.TwoPole(1, Sketch.Of(10.Hp))).ShouldPass("motor-outside-table");
        Sketch.Of(PanelSystem.Wye, Sketch.ThreePole(1, Sketch.Of(15.Hp))).ShouldPass("motor-outside-table");
    }

    [Fact]
    public void A_load_beyond_all_bounds_is_reported_for_it_is_cut_down()
    {
        Sketch.Of(Sketch.OnePole(1, Sketch.Of(999_999_999.VA))).ShouldPass("load-out-of-bounds");
        Sketch.Of(Sketch.OnePole(1, Sketch.Of(1_000_000_000.VA))).ShouldBreak(
            "load-out-of-bounds",
            "Circuit 1 at space 1 has a load that comes to 1000000000 VA or more; it counts as that much.");
    }

    private static Schedule Bonded(bool? bonded)
    {
        var schedule = Sketch.Of();
        return schedule with { Panel = schedule.Panel with { NeutralBonded = bonded } };
    }
}
