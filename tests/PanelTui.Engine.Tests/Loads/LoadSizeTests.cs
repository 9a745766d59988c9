using PanelTui.Engine.Codes;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Loads;

/// <summary>How many volt-amperes a nameplate rating counts for.</summary>
public class LoadSizeTests
{
    [Fact]
    public void Watts_are_divided_by_the_power_factor() =>
        Size(Sketch.OnePole(1, Sketch.Of(900.W) with { PowerFactor = new PowerFactor(0.9m) })).ShouldBe(1000.VA);

    [Fact]
    public void Volt_amperes_count_as_given() => Size(Sketch.OnePole(1, Sketch.Of(750.VA))).ShouldBe(750.VA);

    [Fact]
    public void Amperes_count_at_120_V_on_one_pole() => Size(Sketch.OnePole(1, Sketch.Of(10.A))).ShouldBe(1200.VA);

    [Fact]
    public void Amperes_count_at_240_V_on_two_poles() => Size(Sketch.TwoPole(1, Sketch.Of(10.A))).ShouldBe(2400.VA);

    [Fact]
    public void Amperes_count_at_208_V_on_two_poles_of_a_wye() =>
        Size(PanelSystem.Wye, Sketch.TwoPole(1, Sketch.Of(10.A))).ShouldBe(2080.VA);

    [Fact]
    public void Amperes_count_at_the_voltage_on_the_plate() =>
        Size(Sketch.TwoPole(1, Sketch.Of(10.A) with { Volts = 230.V })).ShouldBe(2300.VA);

    [Fact]
    public void Amperes_from_line_to_neutral_count_at_120_V_on_two_poles_too() =>
        Size(Sketch.TwoPole(1, Sketch.Of(10.A) with { Across = Across.LineToNeutral })).ShouldBe(1200.VA);

    [Fact]
    public void Three_phase_amperes_count_root_3_times() =>
        ((double)Size(PanelSystem.Wye, Sketch.ThreePole(1, Sketch.Of(10.A))).Value).ShouldBe(3602.666, 0.001);

    /// <summary>NEC Table 430.248: 2 hp is 24 A at 115 V, 12 A at 230 V, 13.2 A at 208 V. Seen.</summary>
    [Fact]
    public void Horsepower_count_by_the_table_and_the_circuits_voltage()
    {
        Size(Sketch.OnePole(1, Sketch.Of(2.Hp))).ShouldBe(2880.VA);
        Size(Sketch.TwoPole(1, Sketch.Of(2.Hp))).ShouldBe(2880.VA);
        Size(PanelSystem.TwoLegsOfWye, Sketch.TwoPole(1, Sketch.Of(2.Hp))).ShouldBe(2745.6m.VA);
    }

    /// <summary>NEC Table 430.250: 5 hp is 16.7 A at 208 V. From memory.</summary>
    [Fact]
    public void Three_phase_horsepower_has_a_table_of_its_own() =>
        ((double)Size(PanelSystem.Wye, Sketch.ThreePole(1, Sketch.Of(5.Hp))).Value).ShouldBe(16.7 * 208 * Math.Sqrt(3), 1e-6);

    [Fact]
    public void A_motor_between_two_rows_counts_as_the_next_larger_and_its_step_says_so() =>
        Step(Sketch.TwoPole(1, Sketch.Of(4.Hp))).Label.ShouldContain("28 A (next larger row, 5 hp, 230 V column) x 240 V");

    [Fact]
    public void A_motor_above_the_table_counts_for_nothing_and_its_step_says_so()
    {
        Size(Sketch.TwoPole(1, Sketch.Of(15.Hp))).ShouldBe(VoltAmperes.Zero);
        Step(Sketch.TwoPole(1, Sketch.Of(15.Hp))).Label.ShouldContain("15 hp, not in Table 430.248, counted as nothing");
    }

    [Fact]
    public void A_receptacle_without_a_rating_counts_180_VA_for_each_yoke() =>
        Size(Sketch.OnePole(1, Sketch.Load(null, LoadKind.Receptacle) with { Outlets = 8 })).ShouldBe(1440.VA);

    [Theory]
    [InlineData(LoadKind.SmallAppliance)]
    [InlineData(LoadKind.Laundry)]
    public void Small_appliance_and_laundry_circuits_count_1500_VA_each(LoadKind kind) =>
        Size(Sketch.OnePole(1, Sketch.Load(null, kind))).ShouldBe(1500.VA);

    [Fact]
    public void A_receptacle_with_a_rating_counts_by_it() =>
        Size(Sketch.OnePole(1, Sketch.Of(600.VA, LoadKind.Receptacle))).ShouldBe(600.VA);

    [Fact]
    public void What_is_alike_counts_as_often_as_it_is_there() =>
        Size(Sketch.OnePole(1, Sketch.Of(100.VA) with { Count = 6 })).ShouldBe(600.VA);

    /// <summary>A rating with a few noughts too many is cut down, and a rule says so; the largest that fits is not.</summary>
    [Theory]
    [InlineData(1, false)]
    [InlineData(0, true)]
    public void A_load_is_at_its_bound_only_from_the_bound_on(int below, bool isAtBound) =>
        LoadSize.Of(Sketch.Of(LoadSize.Most - new VoltAmperes(below)), Sketch.OnePole(1), PanelSystem.SplitPhase)
            .IsAtBound.ShouldBe(isAtBound);

    [Fact]
    public void A_step_names_circuit_rating_place_and_section()
    {
        var step = Step(Sketch.TwoPole(1, Sketch.Of(2.Hp)));
        step.Label.ShouldBe("Circuit 1: motor, 2 hp, 12 A (2 hp row, 230 V column) x 240 V, A-B");
        step.Value.ShouldBe(2880);
        step.Unit.ShouldBe("VA");
        step.Cite.ToString().ShouldBe("NEC 2023 Table 430.248");
        step.Spaces.ShouldBe([new SpaceNumber(1)]);
    }

    private static VoltAmperes Size(Circuit circuit) => Size(PanelSystem.SplitPhase, circuit);

    private static VoltAmperes Size(PanelSystem system, Circuit circuit) =>
        LoadSize.Of(circuit.Loads[0], circuit, system).Power;

    private static Derivations.DerivationStep Step(Circuit circuit) =>
        PlacedLoad.Of(circuit, circuit.Loads[0], PanelSystem.SplitPhase).Step(CodeEdition.Nec2023);
}
