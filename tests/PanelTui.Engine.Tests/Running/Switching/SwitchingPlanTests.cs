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

    [Theory]
    [MemberData(nameof(Installations))]
    public void What_a_step_opened_a_later_one_closes_and_nothing_is_moved_to_where_it_is(Installation of)
    {
        var plan = of.Plan;
        var at = of.AtRest();
        foreach (var way in (ImmutableArray<SwitchingStep>[])[plan.Cable, [.. plan.ToStandby, .. plan.Back]])
        {
            foreach (var step in way)
            {
                foreach (var (handle, on) in step.Moves)
                {
                    at[handle].ShouldBe(!on, step.Words);
                    at[handle] = on;
                }
            }

            at.ShouldBe(of.AtRest());
        }
    }

    [Theory]
    [MemberData(nameof(Installations))]
    public void The_two_supplies_are_never_both_closed_on_the_panel(Installation of)
    {
        var at = of.AtRest();
        foreach (var (handle, on) in of.Plan.ToStandby.Concat(of.Plan.Back).SelectMany(step => step.Moves))
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
        foreach (var (handle, on) in of.Plan.ToStandby.Concat(of.Plan.Back).SelectMany(step => step.Moves))
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
    public void Cables_are_joined_with_both_supplies_and_the_sun_off(Installation of)
    {
        var at = of.AtRest();
        foreach (var step in of.Plan.Cable)
        {
            foreach (var (handle, on) in step.Moves) at[handle] = on;
            if (!step.Words.StartsWith("Inlet end first", StringComparison.Ordinal)) continue;
            at[Handle.Grid].ShouldBeFalse();
            at[Handle.Output].ShouldBeFalse();
            at[Handle.Solar].ShouldBe(!of.Solar);
            at[Handle.Selector].ShouldBe(of.Kind != TransferKind.Automatic);
        }

        of.Plan.Cable.IsEmpty.ShouldBe(of.Outlet is null || of.Kind is null);
    }

    /// <summary>Table 430.248: 9.8 A at 120 V on one leg weigh more than half of 8 A at 240 V on each.</summary>
    [Fact]
    public void Motors_are_switched_on_first_and_in_the_order_that_asks_least_of_the_source() =>
        new Installation(TransferKind.Manual, SourceKind.Generator, SourceArrangement.OneUnit, null, false, false).Plan.ToStandby
            .ShouldContain(step => step.Words.Contains("in this order: Circuit 3 (3), Circuit 2 (2).", StringComparison.Ordinal));

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
        steps.ShouldNotContain(step => step.Words.Contains("not even so", StringComparison.Ordinal));
        steps.ShouldContain(step => step.Words.Contains("does not start Circuit 1 (1) with all of them on", StringComparison.Ordinal));
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
