using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;

namespace PanelTui.Engine.Tests.Running;

/// <summary>What each leg of the source carries while a scenario runs.</summary>
public class ScenarioRunTests
{
    /// <summary>C11: a power-equipment forum, "Balanced load??", a 5000 W set. Seen.</summary>
    [Fact]
    public void Four_loads_on_a_5000_W_set_put_850_W_on_each_leg_of_2500_W()
    {
        var run = Run(
            Generator(5000),
            Sketch.OnePole(1, Sketch.Of(750.W), Sketch.Of(100.W)),
            Sketch.OnePole(3, Sketch.Of(700.W), Sketch.Of(150.W)));
        run.Legs[Leg.A].ShouldBe(new LegRun(850.W, 2500.W, new Amperes(850m / 120)));
        run.Legs[Leg.B].Running.ShouldBe(850.W);
        run.Ok.ShouldBe(true);
    }

    /// <summary>C12: a power-equipment forum, "Why are balanced loads needed", a 6000 W set. Seen; 3001 W derived.</summary>
    [Theory]
    [InlineData(2900, true)]
    [InlineData(3000, true)]
    [InlineData(3001, false)]
    public void A_leg_of_a_6000_W_set_carries_3000_W_whatever_the_other_leg_does(int onA, bool ok)
    {
        var run = Run(Generator(6000), Sketch.OnePole(1, Sketch.Of(onA.W)), Sketch.OnePole(3, Sketch.Of(200.W)));
        run.Legs[Leg.A].Ok.ShouldBe(ok);
        run.Legs[Leg.B].Ok.ShouldBe(true);
        run.Ok.ShouldBe(ok);
    }

    /// <summary>Two stacked units, each limited on its own: spare power on one leg cannot help the other.</summary>
    [Fact]
    public void A_stated_limit_per_leg_holds_on_each_leg()
    {
        var source = new StandbySource { Kind = SourceKind.Inverters, ContinuousPerLeg = 2000.W };
        var run = Run(source, Sketch.OnePole(1, Sketch.Of(2500.W)), Sketch.OnePole(3, Sketch.Of(900.W)));
        run.Legs.Values.Select(leg => leg.Ok).ShouldBe([false, true]);
        run.Ok.ShouldBe(false);
    }

    /// <summary>One 120 V unit on both legs has one winding: either leg may take all of it, and both together no more.</summary>
    [Theory]
    [InlineData(2900, 100, true)]
    [InlineData(2900, 101, false)]
    public void Legs_in_phase_share_one_limit(int onA, int onB, bool ok)
    {
        var source = Generator(3000) with { Arrangement = SourceArrangement.InPhase };
        Run(source, Sketch.OnePole(1, Sketch.Of(onA.W)), Sketch.OnePole(3, Sketch.Of(onB.W))).Ok.ShouldBe(ok);
    }

    /// <summary>Common practice, no source: a 50 A 120/240 V outlet carries 50 A on each of its two legs.</summary>
    [Fact]
    public void A_50_A_outlet_carries_50_A_on_each_leg_12_kW_in_all()
    {
        var source = Generator(12_000) with { Outlet = "14-50", Ocpd = 50.A };
        var assessed = Assessed(source, Sketch.OnePole(1, Sketch.Of(6000.W)), Sketch.OnePole(3, Sketch.Of(6000.W)));
        assessed.Scenarios[0].Legs.Values.Select(leg => leg.Amperes).ShouldBe([50.A, 50.A]);
        assessed.Scenarios[0].Running.ShouldBe(12_000.W);
        assessed.Scenarios[0].Ok.ShouldBe(true);
        assessed.Findings.ShouldNotContain(finding => finding.Rule.StartsWith("source-", StringComparison.Ordinal));
    }

    [Fact]
    public void Without_a_stated_limit_there_is_nothing_to_judge()
    {
        var run = Run(new StandbySource { Kind = SourceKind.Generator }, Sketch.OnePole(1, Sketch.Of(900.W)));
        run.Ok.ShouldBeNull();
        run.Legs[Leg.A].Ok.ShouldBeNull();
    }

    [Fact]
    public void Measured_watts_go_before_the_rating_and_count_for_each_of_those_alike() =>
        OnA(Sketch.Of(1000.VA) with { Running = 300.W, Count = 2 }).Running.ShouldBe(600.W);

    [Fact]
    public void Without_measured_watts_it_is_VA_times_power_factor() =>
        OnA(Sketch.Of(1000.VA) with { PowerFactor = new PowerFactor(0.8m) }).Running.ShouldBe(800.W);

    [Fact]
    public void Amperes_hold_the_reactive_part_of_measured_watts() =>
        OnA(Sketch.Of(1000.VA) with { Running = 480.W, PowerFactor = new PowerFactor(0.8m) }).Amperes.ShouldBe(5.A);

    [Fact]
    public void A_240_V_load_takes_half_of_its_watts_from_each_leg()
    {
        var run = Run(Generator(5000), Sketch.TwoPole(1, Sketch.Of(2.Hp) with { Running = 1500.W }));
        run.Legs.Values.Select(leg => leg.Running).ShouldBe([750.W, 750.W]);
        run.Neutral.ShouldBe(Amperes.Zero);
    }

    [Fact]
    public void The_neutral_carries_the_difference_of_the_legs() =>
        Run(Generator(5000), Sketch.OnePole(1, Sketch.Of(1200.W)), Sketch.OnePole(3, Sketch.Of(480.W)))
            .Neutral.ShouldBe(6.A);

    private static LegRun OnA(Load load) => Run(Generator(5000), Sketch.OnePole(1, load)).Legs[Leg.A];

    private static StandbySource Generator(int watts) => new() { Kind = SourceKind.Generator, Continuous = watts.W };

    private static ScenarioRun Run(StandbySource source, params ReadOnlySpan<Circuit> circuits) =>
        Assessed(source, circuits).Scenarios[0];

    private static Assessment Assessed(StandbySource source, params ReadOnlySpan<Circuit> circuits) =>
        (Sketch.Of(circuits) with { Source = source }).With(new Scenario { Name = "All", RunsAll = true }).Assessed();
}
