using System.Collections.Immutable;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running.Switching;

namespace PanelTui.Engine.Tests.Running.Switching;

/// <summary>The steps across each kind of equipment with each kind of source: common practice, no source.</summary>
public class SwitchingPlanTests
{
    private static readonly Circuit[] Circuits =
    [
        Sketch.OnePole(1, Sketch.Of(500.W)),
        Sketch.TwoPole(2, Sketch.Of(1m.Hp) with { Start = new Start.Times(6) }),
        Sketch.OnePole(3, Sketch.Of(0.5m.Hp) with { Start = new Start.Times(6) }),
        Sketch.OnePole(5, Sketch.Of(400.W)) with { Standby = false },
    ];

    public static IEnumerable<object[]> Installations() =>
        from kind in (TransferKind?[])[TransferKind.Manual, TransferKind.Automatic, TransferKind.Interlock, null]
        from source in Enum.GetValues<SourceKind>()
        from arrangement in Enum.GetValues<SourceArrangement>()
        from outlet in (string?[])[null, "14-50"]
        from solar in (bool[])[false, true]
        from managed in (bool[])[false, true]
        select new object[] { new Installation(kind, source, arrangement, outlet, solar, managed) };

    /// <summary>Joined in an outage or long before, the cable, the way to standby, the way back and the cable again are one walk.</summary>
    [Theory]
    [MemberData(nameof(Installations))]
    public void From_joining_the_cable_to_taking_it_apart_all_that_is_opened_is_closed_and_nothing_is_moved_to_where_it_is(Installation of)
    {
        var plan = of.Plan;
        var at = of.AtRest();
        var moves = 0;
        foreach (var part in (ImmutableArray<SwitchingStep>[])[plan.Cable, [.. plan.ToStandby, .. plan.Back], plan.Apart])
        {
            var againstRest = part.SelectMany(step => step.Moves.Where(move =>
            {
                moves++;
                var stood = at[move.Handle] != move.On;
                at[move.Handle] = move.On;
                return !stood;
            }).Select(_ => step.Words)).ToList();
            againstRest.ShouldBeEmpty();
            at.ShouldBe(of.AtRest());
        }

        moves.ShouldBePositive();
   }

    [Theory]
    [MemberData(nameof(Installations))]
    public void No_step_is_left_to_whoever_thinks_the_grid_is_there_or_not(Installation of)
    {
        var cable = of.Plan.Cable.Concat(of.Plan.Apart).Where(step => step.Moves.Length > 0).ToList();
        if (of.Kind is not null) (cable.Count > 0).ShouldBe(of.Outlet is not null);
        cable.ShouldNotContain(step => step.Words.Contains(" if "));
    }

    [Theory]
    [MemberData(nameof(Installations))]
    public void The_two_supplies_are_never_both_closed_on_the_panel(Installation of)
    {
        var at = of.AtRest();
        foreach (var (handle, on) in of.Plan.ToStandby.Concat(of.Plan.Back).SelectMany(step => step.Moves).AtLeastOne())
        {
            at[handle] = on;
            (at[Handle.Grid] && at[Handle.BackFed]).ShouldBeFalse();
        }
    }

    [Theory]
    [MemberData(nameof(Installations))]
    public void By_hand_nothing_hangs_on_the_source_while_the_supplies_change_over(Installation of)
    {
        var at = of.AtRest();
        foreach (var (handle, on) in of.Plan.ToStandby.Concat(of.Plan.Back).SelectMany(step => step.Moves).AtLeastOne())
        {
            at[handle] = on;
            if (handle is Handle.Grid or Handle.BackFed or Handle.TransferSwitch) at[Handle.Branches].ShouldBeFalse();
        }
    }

    [Theory]
    [MemberData(nameof(Installations))]
    public void Automatic_equipment_is_left_to_itself(Installation of)
    {
        if (of.Kind != TransferKind.Automatic) return;
        var moved = of.Plan.ToStandby.Concat(of.Plan.Back).SelectMany(step => step.Moves).Select(move => move.Handle).ToHashSet();
        moved.ShouldNotContain(Handle.Grid);
        moved.ShouldNotContain(Handle.TransferSwitch);
        moved.ShouldNotContain(Handle.Branches);
        moved.Contains(Handle.Engine).ShouldBe(of is { Source: SourceKind.Generator, Outlet: not null });
        if (of is { Source: SourceKind.Generator, Outlet: null })
            of.Plan.Back.ShouldContain(step => step.Words.StartsWith("Leave the generator's control on automatic", StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Installations))]
    public void Cables_are_joined_and_taken_apart_with_every_supply_and_the_sun_off_and_in_no_other_part(Installation of)
    {
        var at = of.AtRest();
        var handled = 0;
        foreach (var step in of.Plan.Cable.Concat(of.Plan.ToStandby).Concat(of.Plan.Back).Concat(of.Plan.Apart).AtLeastOne())
        {
            foreach (var (handle, on) in step.Moves) at[handle] = on;
            step.Words.ShouldNotContain("Take the cable apart");
            if (!step.Words.StartsWith("Inlet end first", StringComparison.Ordinal) && !step.Words.StartsWith("Source end first", StringComparison.Ordinal)) continue;
            handled++;
            if (of.Kind is not null) at[Handle.Grid].ShouldBeFalse();
            at[Handle.Output].ShouldBeFalse();
            at[Handle.Engine].ShouldBeFalse();
            at[Handle.Solar].ShouldBe(!of.Solar);
            at[Handle.Selector].ShouldBe(of.Kind != TransferKind.Automatic);
        }

        handled.ShouldBe(of.Outlet is null ? 0 : 2);
    }

    [Theory]
    [InlineData(false, SourceNeutral.Bonded, null, "twice (at the service and at the source)")]
    [InlineData(true, SourceNeutral.Floating, null, "nowhere")]
    [InlineData(false, SourceNeutral.Floating, true, "twice (at the service and in this panel)")]
    [InlineData(false, SourceNeutral.Bonded, true, "three times (at the service, at the source and in this panel)")]
    [InlineData(true, SourceNeutral.Floating, true, "the neutral is bonded in this panel")]
    public void A_neutral_that_is_not_bonded_once_stops_whoever_would_switch_over_and_says_who_decides(
        bool switches, SourceNeutral neutral, bool? inPanel, string words)
    {
        var stop = Bonded(switches, neutral, inPanel).Stops.ShouldHaveSingleItem();
        stop.ShouldStartWith("STOP, do not switch over");
        stop.ShouldContain(words);
        stop.ShouldContain("qualified electrician");
        stop.ShouldContain("authority having jurisdiction");
    }

    [Theory]
    [InlineData(false, SourceNeutral.Floating)]
    [InlineData(true, SourceNeutral.Bonded)]
    public void A_neutral_that_is_bonded_once_stops_nobody(bool switches, SourceNeutral neutral) =>
        Bonded(switches, neutral, false).Stops.ShouldBeEmpty();

    [Fact]
    public void A_bond_that_is_not_written_down_is_not_settled_and_the_page_names_what_is_missing()
    {
        var stop = Bonded(null, null, null).Stops.ShouldHaveSingleItem();
        stop.ShouldStartWith("Not settled");
        stop.ShouldContain("transfer.switches_neutral and source.neutral not written down");
    }

    /// <summary>5760 VA are above the 4000 W of a leg and there is no surge; the lights alone would be within.</summary>
    [Theory]
    [InlineData(8000, "Whether the source starts Circuit 1 (1) with nothing but motors on is not to be told")]
    [InlineData(11_600, "Whether the source then starts Circuit 1 (1) with all of them on is not to be told")]
    public void By_hand_too_a_start_that_cannot_be_judged_is_said_to_be_so(int watts, string words)
    {
        var steps = SwitchingPlan.Of((Sketch.Of(
            Sketch.TwoPole(1, Sketch.Of(1m.Hp) with { Start = new Start.Times(6) }), Sketch.OnePole(5, Sketch.Of(740.W))) with
        {
            Transfer = new TransferEquipment { Kind = TransferKind.Manual },
            Source = new StandbySource { Kind = SourceKind.Generator, Continuous = watts.W, Surge = 20_000.VA },
        }).Assessed()).ToStandby;
        steps.ShouldContain(step => step.Words.Contains(words, StringComparison.Ordinal));
    }

    /// <summary>Table 430.248: 9.8 A at 120 V on one leg weigh more than half of 8 A at 240 V on each.</summary>
    [Fact]
    public void Motors_are_switched_on_first_and_in_the_order_that_asks_least_of_the_source() =>
        SwitchingPlan.Of((Sketch.Of(Circuits) with
        {
            Transfer = new TransferEquipment { Kind = TransferKind.Manual },
            Source = new StandbySource { Kind = SourceKind.Generator, Continuous = 10_000.W, Surge = 20_000.VA, SurgeTime = new Seconds(2) },
        }).Assessed()).ToStandby
            .ShouldContain(step => step.Words.Contains("in this order: Circuit 3 (3), Circuit 2 (2); not those to leave off.", StringComparison.Ordinal));

    [Fact]
    public void What_stays_off_is_no_motor_that_has_its_turn() =>
        new Installation(TransferKind.Manual, SourceKind.Generator, SourceArrangement.OneUnit, null, false, false).Plan.LeaveOff
            .ShouldBe(["Not on standby by the schedule: Circuit 5 (5)."]);

    [Fact]
    public void Automatic_equipment_closes_on_all_motors_and_the_page_says_whether_the_source_starts_them()
    {
        var plan = new Installation(TransferKind.Automatic, SourceKind.Generator, SourceArrangement.OneUnit, null, false, false).Plan;
        plan.ToStandby.ShouldContain(step => step.Words.Contains("more than it gives for a start", StringComparison.Ordinal));
        plan.ToStandby[0].Words.ShouldStartWith("Before the grid fails");
    }

    /// <summary>5760 VA on each leg by itself, within 6000; 6500 VA on leg A beside 740 VA of lights, above them.</summary>
    [Fact]
    public void A_motor_that_starts_first_may_not_start_again_beside_the_others_and_the_page_says_so()
    {
        var steps = SwitchingPlan.Of((Sketch.Of(
            Sketch.TwoPole(1, Sketch.Of(1m.Hp) with { Start = new Start.Times(6) }), Sketch.OnePole(5, Sketch.Of(740.W))) with
        {
            Transfer = new TransferEquipment { Kind = TransferKind.Manual },
            Source = new StandbySource { Kind = SourceKind.Generator, Continuous = 8000.W, Surge = 12_000.VA, SurgeTime = new Seconds(2) },
        }).Assessed()).ToStandby;
        steps.ShouldNotContain(step => step.Words.Contains("not even one at a time", StringComparison.Ordinal));
        steps.ShouldContain(step => step.Words.Contains("does not start Circuit 1 (1) with all of them on", StringComparison.Ordinal));
    }

    /// <summary>7200 VA a leg are above 6000 and stay off; 5760 VA then start with nothing else on, though not beside what would run of the first.</summary>
    [Fact]
    public void A_motor_that_does_not_start_is_left_off_and_does_not_count_as_running_when_the_next_one_starts()
    {
        var steps = SwitchingPlan.Of((Sketch.Of(
            Sketch.TwoPole(1, Sketch.Of(10.A, LoadKind.Motor) with { Start = new Start.Times(6), Running = 2400.W }),
            Sketch.TwoPole(2, Sketch.Of(1m.Hp) with { Start = new Start.Times(6) })) with
        {
            Transfer = new TransferEquipment { Kind = TransferKind.Manual },
            Source = new StandbySource { Kind = SourceKind.Generator, Continuous = 8000.W, Surge = 12_000.VA, SurgeTime = new Seconds(2) },
        }).Assessed()).ToStandby;
        steps.ShouldContain(step => step.Words.Contains("does not start Circuit 1 (1), not even one at a time and before the rest", StringComparison.Ordinal));
        steps.ShouldContain(step => step.Words.Contains("the breaker of Circuit 2 (2) ON", StringComparison.Ordinal));
    }

    [Fact]
    public void Without_a_grid_and_without_equipment_the_first_step_stops_whoever_has_another_supply()
    {
        var plan = new Installation(null, SourceKind.Generator, SourceArrangement.OneUnit, "L14-30", false, false).Plan;
        plan.ToStandby[0].Words.ShouldContain("If any other supply reaches this panel, stop");
        plan.ToStandby.Concat(plan.Back).SelectMany(step => step.Moves).Select(move => move.Handle)
            .ShouldNotContain(handle => handle == Handle.Grid || handle == Handle.TransferSwitch || handle == Handle.BackFed);
    }

    [Fact]
    public void A_normal_supply_without_equipment_has_no_way_across() => SwitchingPlan.Of((Sketch.Of(Circuits) with
    {
        Transfer = null,
        Feeder = new Feeder { Ocpd = 60.A },
        Source = new StandbySource { Kind = SourceKind.Generator, Outlet = "14-50" },
    }).Assessed()).ToStandby.Single().Words.ShouldContain("do not connect the source");

    private static SwitchingPlan Bonded(bool? switches, SourceNeutral? neutral, bool? inPanel)
    {
        var sketch = Sketch.Of(Circuits);
        return SwitchingPlan.Of((sketch with
        {
            Panel = sketch.Panel with { NeutralBonded = inPanel },
            Transfer = new TransferEquipment { Kind = TransferKind.Manual, SwitchesNeutral = switches },
            Source = new StandbySource { Kind = SourceKind.Generator, Neutral = neutral },
        }).Assessed());
    }

    /// <summary>One panel behind some equipment and source.</summary>
    public sealed record Installation(
        TransferKind? Kind, SourceKind Source, SourceArrangement Arrangement, string? Outlet, bool Solar, bool Managed)
    {
        /// <summary>The grid feeds the panel; inverters are on, a generator stands still.</summary>
        internal Dictionary<Handle, bool> AtRest() => Enum.GetValues<Handle>().ToDictionary(
            handle => handle,
            handle => handle is Handle.Branches or Handle.LeftOff or Handle.Grid or Handle.Selector or Handle.Solar
                || (handle == Handle.Output && Source == SourceKind.Inverters));

        internal SwitchingPlan Plan => SwitchingPlan.Of((Sketch.Of(Circuits) with
        {
            Transfer = Kind is { } kind ? new TransferEquipment { Kind = kind, LoadManagement = Managed } : null,
            Source = new StandbySource
            {
                Kind = Source,
                Arrangement = Arrangement,
                Continuous = 10_000.W,
                Surge = 12_000.VA,
                SurgeTime = new Seconds(2),
                Outlet = Outlet,
                Solar = Solar ? new Solar { Peak = 3000.W, SunHours = new Hours(4) } : null,
            },
        }).Assessed());
    }
}
