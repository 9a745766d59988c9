using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Loads;

/// <summary>Where loads fall, and what that makes of legs and neutral.</summary>
public class ConnectedLoadTests
{
    /// <summary>
    /// C09: selfhelpforums.com, "Load Calculations for Workshop Sub Panel"; ratings seen, the sums per leg derived. The heater and
    /// the saw and the tub at 240 V, the vacuum on A, the lights on B.
    /// </summary>
    [Fact]
    public void A_workshop_with_a_tub_carries_82_5_A_on_one_leg_74_2_A_on_the_other_and_8_3_A_on_the_neutral()
    {
        var connected = Workshop(lightsAt: 3);
        connected.Total.ShouldBe(18_800.VA);
        connected.AmperesOn(Leg.A).ShouldBe(82.5m.A);
        ((double)connected.AmperesOn(Leg.B).Value).ShouldBe(74.2, 0.05);
        ((double)connected.Neutral.Value).ShouldBe(8.3, 0.05);
    }

    /// <summary>C09 again, with lights and vacuum on one leg. Derived.</summary>
    [Fact]
    public void With_its_120_V_loads_on_one_leg_it_carries_85_2_A_there_and_13_7_A_on_the_neutral()
    {
        var connected = Workshop(lightsAt: 2);
        ((double)connected.AmperesOn(Leg.A).Value).ShouldBe(85.2, 0.05);
        ((double)connected.Neutral.Value).ShouldBe(13.7, 0.05);
    }

    /// <summary>Common practice, no source: a small 120 V unit sits on one leg.</summary>
    [Fact]
    public void A_120_V_minisplit_on_a_20_A_one_pole_loads_its_leg_and_the_neutral()
    {
        var connected = Connected(Sketch.OnePole(4, Sketch.Of(9.A, LoadKind.HeatPump)));
        Amperes(connected).ShouldBe([0, 9]);
        connected.Neutral.ShouldBe(9.A);
    }

    /// <summary>Common practice, no source: a 240 V unit loads both legs alike and leaves the neutral alone.</summary>
    [Fact]
    public void A_240_V_minisplit_on_a_20_A_two_pole_loads_both_legs_and_no_neutral()
    {
        var connected = Connected(Sketch.TwoPole(4, Sketch.Of(9.A, LoadKind.HeatPump)));
        Amperes(connected).ShouldBe([9, 9]);
        connected.Neutral.ShouldBe(Quantities.Amperes.Zero);
    }

    /// <summary>Common practice, no source: 4500 W at 240 V is 18.75 A on each leg of its 30 A two-pole.</summary>
    [Fact]
    public void A_water_heater_on_a_30_A_two_pole_loads_both_legs()
    {
        var heater = Sketch.TwoPole(1, Sketch.Of(4500.W, LoadKind.WaterHeater)) with { Breaker = new Breaker(30.A, 2) };
        Amperes(Connected(heater)).ShouldBe([18.75m, 18.75m]);
    }

    [Fact]
    public void A_line_to_neutral_load_of_a_two_pole_sits_on_the_pole_it_names()
    {
        var load = Sketch.Of(1200.VA) with { Across = Across.LineToNeutral, Pole = 2 };
        Amperes(Connected(Sketch.TwoPole(1, load))).ShouldBe([0, 10]);
    }

    [Fact]
    public void A_three_pole_load_takes_root_3_times_less_than_its_VA_over_208_V_on_each_leg()
    {
        var connected = Sketch.Of(PanelSystem.Wye, Sketch.ThreePole(1, Sketch.Of(10.A))).Assessed().Connected;
        Amperes(connected).ShouldBe([10, 10, 10]);
        connected.VoltAmperesOn(Leg.B).ShouldBe(connected.Total / 3);
    }

    [Fact]
    public void Two_halves_of_a_tandem_sit_on_one_leg()
    {
        var circuit = Sketch.OnePole(17, Sketch.Of(1200.VA));
        var connected = Connected(
            circuit with { Space = new SpaceNumber(17, SpaceHalf.A) },
            circuit with { Space = new SpaceNumber(17, SpaceHalf.B) });
        Amperes(connected).ShouldBe([20, 0]);
    }

    [Fact]
    public void A_spare_breaker_connects_nothing() =>
        Connected(Sketch.OnePole(1, Sketch.Of(900.VA)) with { IsSpare = true }).Total.ShouldBe(VoltAmperes.Zero);

    [Fact]
    public void A_breaker_without_loads_connects_nothing() =>
        Connected(Sketch.OnePole(1)).Total.ShouldBe(VoltAmperes.Zero);

    [Fact]
    public void Loads_of_one_group_all_count_as_connected()
    {
        var heat = Sketch.Of(1000.VA) with { Group = "hvac" };
        Connected(Sketch.OnePole(1, heat), Sketch.OnePole(3, heat)).Total.ShouldBe(2000.VA);
    }

    private static ConnectedLoad Workshop(int lightsAt) => Connected(
        Sketch.TwoPole(5, Sketch.Of(3000.VA, LoadKind.SpaceHeat)),
        Sketch.TwoPole(6, Sketch.Of(13.A, LoadKind.Motor)),
        Sketch.TwoPole(9, Sketch.Of(46.A)),
        Sketch.OnePole(1, Sketch.Of(11.A)),
        Sketch.OnePole(lightsAt, Sketch.Of(320.VA, LoadKind.Lighting)));

    private static ConnectedLoad Connected(params ReadOnlySpan<Circuit> circuits) =>
        Sketch.Of(circuits).Assessed().Connected;

    private static IEnumerable<decimal> Amperes(ConnectedLoad connected) =>
        connected.Legs.System.Legs.Select(leg => connected.AmperesOn(leg).Value);
}
