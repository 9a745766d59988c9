using System.Numerics;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Sizing;

namespace PanelTui.Engine.Tests.Sizing;

/// <summary>What a feeder loses on each leg, with the neutral's current taken into account.</summary>
public class VoltageDropTests
{
    /// <summary>Chapter 9 Table 8: 12 AWG copper, 16 A at 120 V over 100 ft, 6.34 V and 5.28 %. Derived from the seen table.</summary>
    [Fact]
    public void Sixteen_amperes_over_100_ft_of_12_AWG_lose_5_28_percent()
    {
        var drop = Drop(PanelSystem.OneLeg, 12, 100, Sketch.OnePole(1, Sketch.Of(1920.VA)));
        ((double)drop.Legs[Leg.A].Lost.Value).ShouldBe(6.336, 1e-9);
        ((double)drop.Worst.Value).ShouldBe(5.28, 1e-9);
    }

    /// <summary>
    /// Chapter 9 Table 9: 6 AWG copper in PVC, 40 A at 240 V and pf 0.85 over 150 ft, 5.28 V and 2.2 % with the impedance as
    /// printed to two digits, 0.44; allowed for with 1 %.
    /// </summary>
    [Fact]
    public void Forty_amperes_at_240_V_over_150_ft_of_6_AWG_lose_2_2_percent()
    {
        var load = Sketch.Of(8160.W) with { PowerFactor = new PowerFactor(0.85m) };
        var drop = Drop(PanelSystem.SplitPhase, 6, 150, Sketch.TwoPole(1, load));
        ((double)(drop.Legs[Leg.A].Lost.Value + drop.Legs[Leg.B].Lost.Value)).ShouldBe(5.28, 5.28 * 0.01);
        ((double)drop.Worst.Value).ShouldBe(2.2, 2.2 * 0.01);
    }

    [Fact]
    public void The_neutral_lifts_the_lighter_leg()
    {
        var drop = Drop(
            PanelSystem.SplitPhase, 6, 1000, Sketch.OnePole(1, Sketch.Of(2640.VA)), Sketch.OnePole(3, Sketch.Of(1080.VA)));
        drop.Legs[Leg.A].Current.ShouldBe(new DropCurrent(22.A, 13.A));
        drop.Legs[Leg.B].Current.ShouldBe(new DropCurrent(9.A, new Amperes(-13)));
        drop.Legs[Leg.B].Lost.Value.ShouldBe(-4 * 0.491m);
        (drop.WorstLeg, drop.Legs[Leg.A].Lost.Value).ShouldBe((Leg.A, 35 * 0.491m));
    }

    [Fact]
    public void Even_legs_lose_half_of_what_one_alone_would()
    {
        var one = Drop(PanelSystem.SplitPhase, 6, 100, Sketch.OnePole(1, Sketch.Of(1200.VA)));
        var both = Drop(
            PanelSystem.SplitPhase, 6, 100, Sketch.OnePole(1, Sketch.Of(1200.VA)), Sketch.OnePole(3, Sketch.Of(1200.VA)));
        ((double)one.Worst.Value).ShouldBe(2 * (double)both.Worst.Value, 1e-9);
    }

    [Fact]
    public void Legs_in_phase_add_on_the_neutral()
    {
        var legs = LegSum.Of(PanelSystem.SplitPhase, [ToNeutral(Leg.A, 2640), ToNeutral(Leg.B, 1080)]);
        DropCurrent.On(Leg.A, legs, SourceArrangement.InPhase).ShouldBe(new DropCurrent(22.A, 31.A));
        DropCurrent.On(Leg.B, legs, SourceArrangement.InPhase).ShouldBe(new DropCurrent(9.A, 31.A));
    }

    /// <summary>On a wye against complex numbers: the leg's current and the neutral's, projected on the leg's voltage.</summary>
    [Theory]
    [InlineData(1200, 600, 2400, 0, 0, 0, 0)]
    [InlineData(0, 0, 0, 2080, 0, 0, 0)]
    [InlineData(0, 0, 0, 0, 0, 0, 3600)]
    [InlineData(1200, 300, 0, 2080, 416, 1040, 1800)]
    public void On_a_wye_the_currents_add_as_phasors(int a, int b, int c, int ab, int bc, int ca, int three)
    {
        var loads = new LegLoads(
            PanelSystem.Wye, Legs(a, b, c), Legs(ab, bc, ca), three.VA);
        foreach (var leg in PanelSystem.Wye.Legs.AtLeastOne())
        {
            var expected = Projected(leg, [a, b, c], [ab, bc, ca], three);
            ((double)DropCurrent.On(leg, loads, SourceArrangement.OneUnit).Sum.Value).ShouldBe(expected, 1e-9);
        }
    }

    [Fact]
    public void Without_a_length_there_is_no_drop_and_it_says_so()
    {
        var schedule = Sketch.Of(Sketch.OnePole(1, Sketch.Of(1200.VA)));
        schedule.Assessed().Feeder!.VoltageDrop.ShouldBeNull();
        schedule.Assessed().Why("voltage-drop")!.Steps.Single().Label
            .ShouldBe("The feeder's length is not stated: no drop is worked out");
    }

    [Fact]
    public void Without_a_conductor_the_smallest_that_would_do_is_taken()
    {
        var schedule = Sketch.Of(Sketch.TwoPole(1, Sketch.Of(50.A))) with { Feeder = new Feeder { Length = 100.Ft } };
        $"{schedule.Assessed().Feeder!.VoltageDrop!.Conductor}".ShouldBe("6 AWG Cu");
    }

    /// <summary>R x pf + X x sin(arccos pf); steel conduit has more of both above 4 AWG.</summary>
    [Theory]
    [InlineData(6, Conduit.Pvc, 1.0, 0.491)]
    [InlineData(6, Conduit.Steel, 1.0, 0.491)]
    [InlineData(6, Conduit.Pvc, 0.8, 0.4234)]
    [InlineData(6, Conduit.Steel, 0.8, 0.4312)]
    [InlineData(1, Conduit.Pvc, 1.0, 0.15)]
    [InlineData(1, Conduit.Steel, 1.0, 0.16)]
    public void The_impedance_follows_power_factor_and_conduit(int gauge, Conduit conduit, double factor, double ohms) =>
        ((double)EffectiveImpedance.Of(Copper(gauge), conduit, new PowerFactor((decimal)factor))!.Value.Value)
            .ShouldBe(ohms, 1e-9);

    [Fact]
    public void Loads_together_have_the_power_factor_of_their_watts()
    {
        var half = Sketch.Of(500.W) with { PowerFactor = new PowerFactor(0.5m) };
        var loads = Sketch.Of(Sketch.OnePole(1, half, Sketch.Of(1000.W))).Assessed().Connected.Loads;
        MeanPowerFactor.Of(loads).Value.ShouldBe(0.75m);
        MeanPowerFactor.Of([]).ShouldBe(PowerFactor.Unity);
    }

    private static Conductor Copper(int gauge) => new(ConductorSize.Awg(gauge), ConductorMetal.Copper);

    private static VoltageDrop Drop(PanelSystem system, int gauge, int length, params Circuit[] circuits)
    {
        var feeder = new Feeder { Conductor = Copper(gauge), Length = length.Ft };
        return (Sketch.Of(system, circuits) with { Feeder = feeder }).Assessed().Feeder!.VoltageDrop!;
    }

    private static LegLoads ToNeutral(Leg only, int power) => LegLoads.None(PanelSystem.SplitPhase) with
    {
        ToNeutral = PerLeg.Of(PanelSystem.SplitPhase, leg => leg == only ? power.VA : VoltAmperes.Zero),
    };

    private static PerLeg<VoltAmperes> Legs(params int[] powers) =>
        PerLeg.Of(PanelSystem.Wye, leg => powers[(int)leg].VA);

    private static double Projected(Leg leg, int[] toNeutral, int[] toNext, int three)
    {
        double[] degrees = [0, 240, 120];
        Complex At(int index) => Complex.FromPolarCoordinates(1, degrees[index] * Math.PI / 180);
        var ahead = Complex.FromPolarCoordinates(1, Math.PI / 6);
        var (own, before) = ((int)leg, ((int)leg + 2) % 3);
        var line = (toNeutral[own] / 120.0 * At(own)) + (three / (Math.Sqrt(3) * 208) * At(own))
            + (toNext[own] / 208.0 * At(own) * ahead) - (toNext[before] / 208.0 * At(before) * ahead);
        var neutral = Enumerable.Range(0, 3).Aggregate(Complex.Zero, (sum, index) => sum + (toNeutral[index] / 120.0 * At(index)));
        return ((line + neutral) / At(own)).Real;
    }
}
