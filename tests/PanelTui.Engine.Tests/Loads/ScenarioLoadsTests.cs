using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Loads;

/// <summary>Which circuits and loads run together in a scenario.</summary>
public class ScenarioLoadsTests
{
    private static readonly Scenario Night = new() { Name = "Night" };

    [Fact]
    public void All_means_every_circuit_on_standby() =>
        Runs(Night with { RunsAll = true }).ShouldBe(["c1", "c3"]);

    [Fact]
    public void A_circuit_off_standby_runs_where_it_is_named() =>
        Runs(Night with { RunsAll = true, Running = ["c5"] }).ShouldBe(["c1", "c3", "c5"]);

    [Fact]
    public void Only_what_is_named_runs() => Runs(Night with { Running = ["c3"] }).ShouldBe(["c3"]);

    [Fact]
    public void An_exception_stays_off() =>
        Runs(Night with { RunsAll = true, Except = ["c1"] }).ShouldBe(["c3"]);

    [Fact]
    public void What_starts_last_is_part_of_the_scenario() =>
        Runs(Night with { Running = ["c1"], Except = ["c5"], Starting = "c5" }).ShouldBe(["c1", "c5"]);

    [Fact]
    public void A_spare_breaker_runs_nothing() =>
        Runs(Night with { Running = ["c7"] }).ShouldBeEmpty();

    [Fact]
    public void A_name_that_no_circuit_has_runs_nothing() =>
        Runs(Night with { Running = ["nobody"] }).ShouldBeEmpty();

    [Fact]
    public void Of_a_group_only_the_largest_counts()
    {
        var (small, large) = (Sketch.Of(900.VA) with { Group = "hvac" }, Sketch.Of(1000.VA) with { Group = "hvac" });
        Counted(Sketch.OnePole(1, small), Sketch.OnePole(3, large), Sketch.OnePole(5, Sketch.Of(50.VA)))
            .ShouldBe(["c3", "c5"]);
    }

    /// <summary>1000 VA to neutral loads its leg more than 1800 VA over two legs.</summary>
    [Fact]
    public void The_largest_of_a_group_is_the_one_that_loads_its_worst_leg_most()
    {
        var (one, two) = (Sketch.Of(1000.VA) with { Group = "hvac" }, Sketch.Of(1800.VA) with { Group = "hvac" });
        Counted(Sketch.TwoPole(1, two), Sketch.OnePole(5, one)).ShouldBe(["c5"]);
    }

    [Fact]
    public void Of_equals_in_a_group_the_first_in_the_file_counts()
    {
        var load = Sketch.Of(1000.VA) with { Group = "hvac" };
        Counted(Sketch.OnePole(3, load), Sketch.OnePole(1, load)).ShouldBe(["c3"]);
        Counted(Sketch.OnePole(1, load, load)).ShouldBe(["c1"]);
    }

    [Fact]
    public void A_group_counts_only_what_runs()
    {
        var (small, large) = (Sketch.Of(900.VA) with { Group = "hvac" }, Sketch.Of(1000.VA) with { Group = "hvac" });
        var schedule = Sketch.Of(Sketch.OnePole(1, small), Sketch.OnePole(3, large));
        Of(schedule, Night with { Running = ["c1"] }).Loads.Single().Circuit.Id.ShouldBe("c1");
    }

    private static IEnumerable<string?> Runs(Scenario scenario) => Of(
        Sketch.Of(
            Sketch.OnePole(1),
            Sketch.OnePole(3),
            Sketch.OnePole(5) with { Standby = false },
            Sketch.OnePole(7) with { IsSpare = true }),
        scenario).Circuits.Select(circuit => circuit.Id);

    private static IEnumerable<string?> Counted(params ReadOnlySpan<Circuit> circuits) =>
        Of(Sketch.Of(circuits), Night with { RunsAll = true }).Loads.Select(load => load.Circuit.Id);

    private static ScenarioLoads Of(Schedule schedule, Scenario scenario) =>
        ScenarioLoads.Of(scenario, schedule, PlacedLoad.AllOf(schedule));
}
