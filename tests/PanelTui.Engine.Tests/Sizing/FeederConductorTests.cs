using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Sizing;

namespace PanelTui.Engine.Tests.Sizing;

/// <summary>The feeder's conductors: by the terminals, by heat and company, and by the device that has to protect them.</summary>
public class FeederConductorTests
{
    /// <summary>310.15: 8 AWG copper at 75 C, seven together in 40 C, 50 A x 0.88 x 70 % = 30.8 A. Seen as a worked example.</summary>
    [Fact]
    public void Heat_and_company_leave_30_8_A_of_8_AWG()
    {
        var conditions = new WiringConditions(
            TemperatureColumn.At75, TemperatureColumn.At75, 40.DegC, 7, CodeEdition.Nec2023);
        conditions.Fit(Copper(8))!.Ampacity.ShouldBe(30.8m.A);
    }

    [Fact]
    public void Warmer_insulation_starts_higher_but_its_ends_stay_with_the_terminals()
    {
        var conditions = new WiringConditions(
            TemperatureColumn.At60, TemperatureColumn.At90, 40.DegC, 3, CodeEdition.Nec2023);
        var fit = conditions.Fit(Copper(6))!;
        (fit.AtEnds, fit.OnTheWay, fit.Ampacity).ShouldBe((55.A, 68.25m.A, 55.A));
    }

    [Fact]
    public void Where_insulation_must_not_be_used_it_carries_nothing() =>
        new WiringConditions(TemperatureColumn.At60, TemperatureColumn.At60, 60.DegC, 3, CodeEdition.Nec2023)
            .Fit(Copper(6))!.Ampacity.ShouldBe(Amperes.Zero);

    [Theory]
    [InlineData(24, null, "10 AWG Cu")]
    [InlineData(24, 60, "6 AWG Cu")]
    [InlineData(51, 60, "6 AWG Cu")]
    [InlineData(50, 50, "8 AWG Cu")]
    [InlineData(66, null, "4 AWG Cu")]
    [InlineData(380, null, "500 kcmil Cu")]
    public void The_smallest_conductor_carries_the_load_and_suits_the_device(int load, int? device, string conductor) =>
        $"{Sized(load, new Feeder { Ocpd = device?.A }, 75).Conductor}".ShouldBe(conductor);

    [Theory]
    [InlineData(null, "6 AWG Cu")]
    [InlineData(75, "8 AWG Cu")]
    public void Terminals_that_are_not_marked_count_as_60_C(int? terminals, string conductor) =>
        $"{Sized(50, new Feeder(), terminals).Conductor}".ShouldBe(conductor);

    [Fact]
    public void Where_aluminum_is_stated_aluminum_is_sized()
    {
        var sized = Sized(51, new Feeder { Conductor = new Conductor(ConductorSize.Awg(6), ConductorMetal.Aluminum) }, 75);
        $"{sized.Conductor}".ShouldBe("4 AWG Al");
        $"{sized.Copper!.Conductor}".ShouldBe("6 AWG Cu");
        sized.StatedCarries.ShouldBe(false);
    }

    [Fact]
    public void Above_the_table_there_is_no_conductor()
    {
        Sized(381, new Feeder(), 75).Conductor.ShouldBeNull();
        Sized(381, new Feeder(), 75).WhyConductor(Schedule(381, new Feeder(), 75)).Steps[^1].Label
            .ShouldBe("No size of the table will do for");
    }

    /// <summary>215.2(A)(1): the ends carry continuous loads at 125 %, the way carries them at 100 %.</summary>
    [Fact]
    public void Continuous_loads_count_125_percent_at_the_ends_alone()
    {
        var load = Sketch.Of(4800.VA) with { Continuous = true };
        var sized = Sketch.Of(Sketch.OnePole(1, load)).Assessed().Feeder!;
        sized.Load.ShouldBe(new ConductorLoad(50.A, 40.A));
    }

    /// <summary>430.24, motors of 28 A: 35 + 3 x 28 = 119 A. Seen in a tutorial on motor conductors.</summary>
    [Fact]
    public void The_largest_motor_counts_125_percent_on_the_way_too()
    {
        var motors = Enumerable.Range(0, 4).Select(row => Sketch.TwoPole(1 + (4 * row), Sketch.Of(5.Hp))).ToArray();
        var load = Sketch.Of(motors).Assessed().Feeder!.Load;
        load.ShouldBe(new ConductorLoad(119.A, 119.A));
    }

    [Theory]
    [InlineData(8, 75, 50)]
    [InlineData(6, 60, 60)]
    [InlineData(10, 75, 30)]
    [InlineData(12, 75, 20)]
    public void A_device_rounds_up_but_for_small_conductors(int gauge, int terminals, int largest)
    {
        var column = TemperatureColumns.Reached(terminals.DegC);
        var fit = new WiringConditions(column, column, 30.DegC, 3, CodeEdition.Nec2023).Fit(Copper(gauge))!;
        new ConductorProtection(RoundsUp: true, HoldsSmallLimits: true, CodeEdition.Nec2023).Largest(fit).ShouldBe(largest.A);
    }

    [Theory]
    [InlineData(799, 800)]
    [InlineData(801, 800)]
    public void Above_800_A_a_device_does_not_round_up(int ampacity, int largest) =>
        new ConductorProtection(RoundsUp: true, HoldsSmallLimits: true, CodeEdition.Nec2023)
            .Largest(new ConductorFit(Copper(1), ampacity.A, ampacity.A)).ShouldBe(largest.A);

    [Fact]
    public void What_is_assumed_says_so()
    {
        var labels = Sized(24, new Feeder(), null).WhyConductor(Schedule(24, new Feeder(), null)).Steps.Select(step => step.Label);
        labels.Count(label => label.EndsWith(", assumed", StringComparison.Ordinal)).ShouldBe(4);
    }

    [Fact]
    public void What_is_stated_is_not_called_assumed()
    {
        var feeder = new Feeder { Insulation = 75.DegC, Ambient = 30.DegC, CurrentCarrying = 3 };
        Sized(24, feeder, 75).WhyConductor(Schedule(24, feeder, 75)).Steps
            .AtLeastOne().ShouldAllBe(step => !step.Label.Contains("assumed"));
    }

    private static Conductor Copper(int gauge) => new(ConductorSize.Awg(gauge), ConductorMetal.Copper);

    private static FeederSizing Sized(int load, Feeder feeder, int? terminals) =>
        Schedule(load, feeder, terminals).Assessed().Feeder!;

    private static Schedule Schedule(int load, Feeder feeder, int? terminals)
    {
        var schedule = Sketch.Of(Sketch.TwoPole(1, Sketch.Of(load.A)));
        return schedule with { Feeder = feeder, Panel = schedule.Panel with { Terminals = terminals?.DegC } };
    }
}
