using PanelTui.Engine.Codes;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running.Starting;

namespace PanelTui.Engine.Tests.Running.Starting;

/// <summary>What a motor draws as it starts, and whether the source gives it with everything else running.</summary>
public class StartTests
{
    private static readonly StandbySource Pair = new()
    {
        Kind = SourceKind.Inverters,
        Arrangement = SourceArrangement.Split,
        ContinuousPerLeg = 5000.W,
        SurgePerLeg = 10_000.VA,
        SurgeTime = new Seconds(2),
    };

    /// <summary>Table 430.7(B), derived: 1 hp at 230 V, code K, is 34.78 A to 39.09 A. The upper end counts.</summary>
    [Fact]
    public void A_1_hp_motor_of_code_K_draws_up_to_39_09_A_at_230_V()
    {
        var start = Start(Sketch.TwoPole(1, Pump(new Start.CodeLetter('K')) with { Volts = 230.V }));
        Math.Round(start.Current.Value, 2).ShouldBe(39.09m);
        start.Power.ShouldBe(8990.VA);
        start.Words.ShouldBe("code K, 8 to 8.99 kVA/hp x 1 hp");
        start.Basis.Cite.Section.ShouldBe("Table 430.7(B)");
    }

    /// <summary>An equipment manual: 1/4 hp at 230 V, code M, 12.2 A at 11.2 kVA/hp. The letter ends at 11.19.</summary>
    [Fact]
    public void A_quarter_hp_motor_of_code_M_draws_12_2_A_at_230_V() => Math.Round(Start(Sketch.TwoPole(
        1, Sketch.Of(0.25m.Hp) with { Volts = 230.V, Start = new Start.CodeLetter('M') })).Current.Value, 1).ShouldBe(12.2m);

    [Fact]
    public void Without_a_letter_a_motor_starts_at_six_times_its_full_load_current()
    {
        var start = Start(Sketch.TwoPole(1, Pump(new Start.Times(6))));
        start.FullLoad.ShouldBe(8.A);
        start.Current.ShouldBe(48.A);
        start.Basis.Cite.Standing.ShouldBe(Standing.CommonPractice);
    }

    [Fact]
    public void A_stated_current_goes_by_itself() =>
        Start(Sketch.TwoPole(1, Pump(new Start.Current(47.A)))).Current.ShouldBe(47.A);

    [Fact]
    public void A_soft_starter_takes_its_share_away() =>
        Start(Sketch.TwoPole(1, Pump(new Start.Times(6)) with { SoftStart = 60.Pct })).Current.ShouldBe(19.2m.A);

    [Fact]
    public void A_code_letter_on_a_load_without_hp_says_so()
    {
        var start = Start(Sketch.OnePole(1, Sketch.Of(10.A, LoadKind.Motor) with { Start = new Start.CodeLetter('K') }));
        start.Current.ShouldBe(60.A);
        start.Words.ShouldContain("needs a rating in hp");
    }

    [Fact]
    public void Its_starting_power_takes_the_place_of_its_running_power_on_its_own_legs()
    {
        var worst = Worst(Pair, Sketch.TwoPole(1, Pump(new Start.CodeLetter('K')) with { Running = 1100.W }), Sketch.OnePole(5, Sketch.Of(600.W)));
        worst.AskedOn(Leg.A).ShouldBe(5095.VA);
        worst.AskedOn(Leg.B).ShouldBe(4495.VA);
        worst.MayOn.ShouldBe(10_000.VA);
        worst.Ok.ShouldBe(true);
    }

    [Theory]
    [InlineData(9280, true)]
    [InlineData(9281, false)]
    public void A_start_exactly_at_the_surge_is_within_it(int others, bool ok) => Worst(
        Pair, Sketch.OnePole(1, Sketch.Of(720.VA, LoadKind.Motor) with { Start = new Start.Times(1) }), Sketch.OnePole(2, Sketch.Of(others.W)))
        .Ok.ShouldBe(ok);

    [Fact]
    public void The_worst_start_is_the_one_nearest_to_the_surge_of_a_leg_not_the_largest()
    {
        var worst = Worst(
            Pair,
            Sketch.TwoPole(1, Pump(new Start.CodeLetter('K'))),
            Sketch.OnePole(5, Sketch.Of(0.5m.Hp) with { Start = new Start.Times(6) }));
        worst.Starting[0].Circuit.Space.ShouldBe(new SpaceNumber(5));
        worst.AskedOn(Leg.A).ShouldBe(((9.8m * 120 * 6) + 960).VA);
    }

    [Fact]
    public void A_surge_without_a_time_is_worth_nothing()
    {
        var worst = Worst(Pair with { SurgeTime = null }, Sketch.TwoPole(1, Pump(new Start.Times(12))));
        worst.Surge.Worth.ShouldBe(SurgeWorth.WithoutTime);
        worst.MayOn.ShouldBe(5000.VA);
        worst.Ok.ShouldBeNull();
    }

    [Fact]
    public void A_surge_that_is_over_before_a_motor_runs_is_worth_nothing() =>
        SurgeLimit.Of(Pair with { SurgeTime = new Seconds(0.1m) }, PanelSystem.SplitPhase).Worth.ShouldBe(SurgeWorth.TooShort);

    [Fact]
    public void A_start_within_continuous_power_needs_no_surge() =>
        Worst(Pair with { SurgePerLeg = null }, Sketch.TwoPole(1, Pump(new Start.Times(2)))).Ok.ShouldBe(true);

    [Fact]
    public void One_more_than_may_start_at_once_passes_the_surge_of_a_leg()
    {
        var circuits = Enumerable.Range(0, 4).Select(number => Sketch.TwoPole(
            1 + (4 * number), Pump(new Start.CodeLetter('K')) with { Running = 1000.W })).ToArray();
        var table = Run(Pair, circuits).Starts;
        // 2000 W run on each leg; each start adds 4495 - 500 VA.
        table.AtOnce.ShouldBe(2);
    }

    /// <summary>Each start adds 8990 - 1000 VA to the 3000 VA that run: two keep to 10,000 VA a leg, and ask 18,980 VA in all.</summary>
    [Fact]
    public void A_limit_in_all_keeps_down_how_many_may_start_at_once()
    {
        var circuits = Enumerable.Range(0, 3).Select(number => Sketch.TwoPole(
            1 + (4 * number), Pump(new Start.CodeLetter('K')) with { Running = 1000.W })).ToArray();
        Run(Pair with { Surge = 19_000.VA }, circuits).Starts.AtOnce.ShouldBe(2);
        Run(Pair with { Surge = 12_000.VA }, circuits).Starts.AtOnce.ShouldBe(1);
    }

    /// <summary>Arithmetic: nothing less than none of the start, nothing more than all of it.</summary>
    [Theory]
    [InlineData(0, 48)]
    [InlineData(100, 0)]
    [InlineData(120, 0)]
    [InlineData(-20, 48)]
    public void A_soft_starter_takes_away_none_to_all_of_a_start(int share, int current) =>
        Start(Sketch.TwoPole(1, Pump(new Start.Times(6)) with { SoftStart = share.Pct })).Current.ShouldBe(current.A);

    /// <summary>6 x 12 A x 240 V / 2 are 8640 VA a leg: within 10,000 alone, and beside 1361 VA no more.</summary>
    [Fact]
    public void A_start_that_is_too_much_beside_the_others_is_told_alone_with_what_to_have_off_for_it()
    {
        Circuit[] circuits =
        [
            Sketch.TwoPole(1, Sketch.Of(2.Hp) with { Start = new Start.Times(6), Running = 1500.W }),
            Sketch.OnePole(5, Sketch.Of(800.W)) with { Priority = 2 },
            Sketch.OnePole(9, Sketch.Of(600.W)) with { Priority = 1 },
            Sketch.OnePole(3, Sketch.Of(900.W)),
        ];
        var run = Run(Pair, circuits);
        run.Starts.Worst!.Ok.ShouldBe(false);
        var relief = StartRelief.Of(run.Starts.Worst, run, Sketch.Of(circuits) with { Source = Pair });
        relief.Alone.AskedOn(Leg.A).ShouldBe(8640.VA);
        relief.Alone.Ok.ShouldBe(true);
        relief.Off.Select(circuit => circuit.Space.Number).ShouldBe([9]);
    }

    [Fact]
    public void A_start_that_is_too_much_alone_has_nothing_to_have_off_for_it()
    {
        Circuit[] circuits = [Sketch.TwoPole(1, Sketch.Of(3.Hp) with { Start = new Start.Times(6) }), Sketch.OnePole(5, Sketch.Of(800.W))];
        var run = Run(Pair, circuits);
        var relief = StartRelief.Of(run.Starts.Worst!, run, Sketch.Of(circuits) with { Source = Pair });
        relief.Alone.Ok.ShouldBe(false);
        relief.Off.ShouldBeEmpty();
    }

    [Fact]
    public void The_easiest_order_starts_the_largest_while_nothing_else_of_them_runs()
    {
        var table = Run(
            Pair,
            Sketch.OnePole(1, Sketch.Of(500.VA, LoadKind.Motor) with { Start = new Start.Times(3) }),
            Sketch.OnePole(2, Sketch.Of(1000.VA, LoadKind.Motor) with { Start = new Start.Times(6) })).Starts;
        table.EasiestOrder.Select(step => step.AskedOn(Leg.A)).ShouldBe([6000.VA, 2500.VA]);
        table.Worst!.AskedOn(Leg.A).ShouldBe(6500.VA);
    }

    private static Load Pump(Start start) => Sketch.Of(1.Hp) with { Start = start };

    private static MotorStart Start(Circuit circuit) => MotorStart.Of(
        PlacedLoad.Of(circuit, circuit.Loads[0], PanelSystem.SplitPhase), CodeEdition.Nec2023);

    private static StartMoment Worst(StandbySource source, params Circuit[] circuits) => Run(source, circuits).Starts.Worst!;

    private static Engine.Running.ScenarioRun Run(StandbySource source, params Circuit[] circuits) =>
        (Sketch.Of(circuits) with { Source = source }).With(new Scenario { Name = "All", RunsAll = true }).Assessed().Scenarios[0];
}
