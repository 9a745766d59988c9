using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Rules;

namespace PanelTui.Engine.Tests.Rules;

/// <summary>Bonding, methods that lack a figure or are out of place, motors that no table reaches.</summary>
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
    public void A_dwelling_without_a_floor_area_is_noted()
    {
        var schedule = Sketch.Of().By(DemandMethodName.DwellingOptional);
        schedule.ShouldBreak(
            "demand-lacks-a-figure",
            "Demand method dwelling-optional asks for demand.floor_area, which is not stated: general lighting counts as connected.");
        Judge.Findings(schedule, "demand-lacks-a-figure").Single().Severity.ShouldBe(Severity.Note);
    }

    [Fact]
    public void A_measured_load_without_its_peak_or_its_days_is_noted()
    {
        Sketch.Of().By(DemandMethodName.Measured).ShouldBreak(
            "demand-lacks-a-figure",
            "Demand method measured asks for demand.measured_peak, which is not stated: demand, feeder and transfer ratings are left out.");
        Measured(null).ShouldBreak(
            "demand-lacks-a-figure",
            "Demand method measured asks for demand.measured_days, which is not stated: the measured peak is taken as it stands.");
        Measured(30).ShouldPass("demand-lacks-a-figure");
    }

    [Fact]
    public void A_method_that_asks_for_nothing_is_not_noted() =>
        Sketch.Of().By(DemandMethodName.NonDwelling).ShouldPass("demand-lacks-a-figure");

    /// <summary>220.87, exception: 30 days. Seen.</summary>
    [Fact]
    public void A_peak_of_less_than_30_days_is_reported()
    {
        Measured(30).ShouldPass("measured-too-short");
        Measured(29).ShouldBreak(
            "measured-too-short", "The peak was measured over 29 days; the least is 30 days.");
    }

    /// <summary>220.82(A): 100 A on three wires. From memory.</summary>
    [Fact]
    public void The_optional_calculation_on_a_small_feeder_is_reported()
    {
        Optional(100).ShouldPass("optional-method-out-of-place");
        Optional(90).ShouldBreak(
            "optional-method-out-of-place",
            "Demand method dwelling-optional is for three wires of 100 A or more; the feeder's device is 90 A.");
        Sketch.Of(PanelSystem.Wye).By(DemandMethodName.DwellingOptional).ShouldBreak(
            "optional-method-out-of-place",
            "Demand method dwelling-optional is for three wires of 100 A or more; this panel has 208Y/120 V 3ph 4W.");
    }

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

    private static Schedule Measured(int? days) => Sketch.Of() with
    {
        Demand = new DemandBasis { Method = DemandMethodName.Measured, MeasuredPeak = 41.A, MeasuredDays = days },
    };

    private static Schedule Optional(int device) =>
        Sketch.Of().By(DemandMethodName.DwellingOptional) with { Feeder = new Feeder { Ocpd = device.A } };

    private static Schedule Bonded(bool? bonded)
    {
        var schedule = Sketch.Of();
        return schedule with { Panel = schedule.Panel with { NeutralBonded = bonded } };
    }
}
