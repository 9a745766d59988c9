using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Tests.Rules;

namespace PanelTui.Engine.Tests.Sizing;

/// <summary>What the rules on sizes say, in whole sentences; their limits are in the cases.</summary>
public class SizingRuleTests
{
    [Fact]
    public void A_breaker_above_the_limit_of_a_small_wire() =>
        Wired(12, 30).ShouldBreak(
            "breaker-above-small-conductor-limit",
            "Circuit 1 at space 1 has a breaker of 30 A; the most for 12 AWG Cu is 20 A.");

    [Fact]
    public void A_breaker_above_its_wire() =>
        Marked(Wired(8, 60)).ShouldBreak(
            "breaker-above-conductor",
            "Circuit 1 at space 1 has a breaker of 60 A; 8 AWG Cu carries 50 A at 75 C terminals, "
            + "and the largest breaker for that is 50 A.");

    [Fact]
    public void A_breaker_that_may_not_round_up_where_terminals_are_not_marked() =>
        Wired(6, 60, Sketch.Load(null, LoadKind.Receptacle) with { Outlets = 2 }).ShouldBreak(
            "breaker-above-conductor",
            "Circuit 1 at space 1 has a breaker of 60 A; 6 AWG Cu carries 55 A at 60 C, the terminals' marking not being stated, "
            + "and the largest breaker for that is 50 A, with several receptacles on it.");

    [Fact]
    public void A_continuous_load_above_80_percent() =>
        Sketch.Of(Sketch.OnePole(1, Sketch.Of(17.A) with { Continuous = true })).ShouldBreak(
            "continuous-load-above-80-percent-of-breaker",
            "Circuit 1 at space 1 has 17.0 A, 17.0 A of it continuous, which asks for 21.3 A; its breaker is 20 A.");

    [Fact]
    public void A_long_branch() =>
        Run(100).ShouldBreak(
            "voltage-drop-high", "Circuit 1 at space 1 loses 3.3 % in 100 ft of 12 AWG Cu; the code's note names 3 %.");

    [Fact]
    public void A_long_feeder_before_a_branch() =>
        (Run(90) with { Feeder = Feeder(6) with { Length = 300.Ft } }).ShouldBreak(
            "voltage-drop-high", "Circuit 1 at space 1 loses 5.4 % together with the feeder; the code's note names 5 %.");

    [Fact]
    public void A_long_feeder() =>
        (Run(10) with { Feeder = Feeder(6) with { Length = 400.Ft } }).ShouldBreak(
            "feeder-voltage-drop-high", "The feeder loses 3.3 % on leg A in 400 ft of 6 AWG Cu; the code's note names 3 %.");

    [Fact]
    public void Feeder_conductors_too_small_at_their_ends() =>
        (Marked(Fed(66)) with { Feeder = Feeder(6) }).ShouldBreak(
            "feeder-conductor-below-demand", "The worst leg asks for 66.0 A; 6 AWG Cu carries 65.0 A at 75 C terminals.");

    [Fact]
    public void Feeder_conductors_too_small_on_the_way() =>
        (Marked(Fed(50)) with { Feeder = Feeder(6) with { Ambient = 40.DegC, CurrentCarrying = 6 } }).ShouldBreak(
            "feeder-conductor-below-demand",
            "The worst leg asks for 50.0 A; 6 AWG Cu carries 45.8 A in 40 C with 6 current-carrying conductors together.");

    [Fact]
    public void A_device_too_large_for_the_feeder() =>
        (Marked(Fed(20)) with { Feeder = Feeder(8) with { Ocpd = 60.A } }).ShouldBreak(
            "feeder-device-above-conductor",
            "The device ahead of the feeder is 60 A; 8 AWG Cu carries 50.0 A, and the largest device for that is 50 A.");

    [Fact]
    public void An_outlet_behind_a_larger_breaker() =>
        Sourced("L14-30", 50).ShouldBreak(
            "cord-or-inlet-below-source-breaker",
            "The source's breaker is 50 A; the L14-30 outlet, cord and inlet are rated 30 A.");

    [Fact]
    public void An_outlet_without_a_neutral() =>
        Sourced("L6-30", 30).ShouldBreak(
            "source-outlet-without-neutral", "The L6-30 outlet of the source has 250 V and no neutral; this panel needs one.");

    [Fact]
    public void A_cord_made_up_too_small() =>
        Sourced("L14-30", 30, 10).ShouldBreak(
            "field-made-cord-too-small", "Made up on site, a cord of 10 AWG Cu carries 25 A; 30 A is ahead of it.");

    [Fact]
    public void A_breaker_above_what_the_nameplate_allows() =>
        Wired(10, 40, Plated()).ShouldBreak(
            "breaker-above-mocp", "Circuit 1 at space 1 has a breaker of 40 A; the nameplate allows 35 A.");

    [Fact]
    public void A_wire_below_what_the_nameplate_asks() =>
        Wired(12, 30, Plated()).ShouldBreak(
            "conductor-below-mca",
            "Circuit 1 at space 1 has a nameplate that asks for 21.0 A; 12 AWG Cu carries 20 A at 60 C, "
            + "the terminals' marking not being stated.");

    [Fact]
    public void A_wire_below_its_motor() =>
        Marked(Wired(14, 40, Sketch.Of(1.5m.Hp))).ShouldBreak(
            "motor-conductor-too-small",
            "Circuit 1 at space 1 asks for 25.0 A with 125 % of its motor; 14 AWG Cu carries 20 A at 75 C terminals.");

    [Fact]
    public void A_breaker_above_what_lets_a_motor_start() =>
        Wired(6, 70, Sketch.Of(1.Hp)).ShouldBreak(
            "breaker-above-motor-limit",
            "Circuit 1 at space 1 has a breaker of 70 A; its motor takes 40 A as a rule and 60 A at most.");

    private static Conductor Copper(int gauge) => new(ConductorSize.Awg(gauge), ConductorMetal.Copper);

    private static Feeder Feeder(int gauge) => new() { Conductor = Copper(gauge) };

    private static Load Plated() =>
        Sketch.Of(16.A, LoadKind.Cooling) with { MinimumCircuitAmpacity = 21.A, MaximumOvercurrentProtection = 35.A };

    private static Schedule Wired(int gauge, int breaker, params ReadOnlySpan<Load> loads) =>
        Sketch.Of(Sketch.OnePole(1, loads) with { Wire = Copper(gauge), Breaker = new Breaker(breaker.A) });

    private static Schedule Run(int length) =>
        Sketch.Of(Sketch.OnePole(1, Sketch.Of(1200.VA)) with { Wire = Copper(12), Length = length.Ft });

    private static Schedule Fed(int current) => Sketch.Of(Sketch.TwoPole(1, Sketch.Of(current.A)));

    private static Schedule Marked(Schedule schedule) =>
        schedule with { Panel = schedule.Panel with { Terminals = 75.DegC } };

    private static Schedule Sourced(string outlet, int breaker, int? cord = null) => Sketch.Of() with
    {
        Source = new StandbySource
        {
            Kind = SourceKind.Generator,
            Outlet = outlet,
            Ocpd = breaker.A,
            Cord = cord is { } gauge ? Copper(gauge) : null,
        },
    };
}
