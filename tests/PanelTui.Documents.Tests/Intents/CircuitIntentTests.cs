using PanelTui.Documents.Intents;
using PanelTui.Documents.Tests.Reading;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Tests.Intents;

/// <summary>Adding, moving, swapping and removing circuits and loads, seen in the file.</summary>
public class CircuitIntentTests
{
    [Fact]
    public void A_move_changes_the_space_alone()
    {
        var move = MoveCircuits.In(Shed.Snapshot, [new Hop(0, new SpaceNumber(5))]);
        move.Change.ShouldNotBeNull().Title.ShouldBe("Move Sorting lights from 1 to 5");
        Shed.Difference(move).ShouldBe("-     space: 1\n+     space: 5");
    }

    [Fact]
    public void A_swap_gives_each_the_others_space()
    {
        var after = MoveCircuits.In(Shed.Snapshot, [new Hop(0, new SpaceNumber(6)), new Hop(1, new SpaceNumber(1))]).After.ShouldNotBeNull().Schedule.ShouldNotBeNull();
        after.Circuits.Select(circuit => $"{circuit.Name} {circuit.Space}")
            .ShouldBe(["Sorting lights 6", "Well pump 1"]);
    }

    [Fact]
    public void A_new_circuit_stands_where_the_order_of_spaces_has_it_and_looks_like_its_neighbours() =>
        Shed.Difference(AddCircuit.In(
            Shed.Snapshot, NewCircuit.Of(new(3), "20 A", "Cold room fan", NewLoad.Of("motor", "1/2 hp"))))
            .ShouldBe(
                """
                +   - id: cold-room-fan
                +     space: 3
                +     name: Cold room fan
                +     breaker: 20 A
                +     loads:
                +       - {kind: motor, rating: 1/2 hp}
                +
                """.ReplaceLineEndings("\n"));

    [Fact]
    public void A_new_circuit_comes_last_where_the_file_has_no_order_of_spaces()
    {
        var mixed = MoveCircuits.In(Shed.Snapshot, [new Hop(0, new SpaceNumber(9))]).After.ShouldNotBeNull();
        AddCircuit.In(mixed, NewCircuit.Of(new(3), "20 A")).After.ShouldNotBeNull().Schedule.ShouldNotBeNull()
            .Circuits.Select(circuit => $"{circuit.Space}").ShouldBe(["9", "6", "3"]);
    }

    [Theory]
    [InlineData("schedule: 1\npanel: {system: 120/240 V 1ph 3W, spaces: 20}\n")]
    [InlineData("schedule: 1\npanel: {system: 120/240 V 1ph 3W, spaces: 20}\ncircuits:\n")]
    [InlineData(
        "schedule: 1\npanel: {system: 120/240 V 1ph 3W, spaces: 20}\ncircuits: []   # none yet\nscenarios: []\n")]
    public void The_first_circuit_finds_its_place(string text) =>
        AddCircuit.In(
            Schedules.Snapshot(text), NewCircuit.Of(new(1), "15 A", "Lights", NewLoad.Of("lighting", "100 W")))
            .After.ShouldNotBeNull().Schedule.ShouldNotBeNull().Circuits.ShouldHaveSingleItem()
            .Loads.Length.ShouldBe(1);

    [Fact]
    public void A_file_in_braces_gets_its_new_circuit_in_braces()
    {
        var file = Schedules.Snapshot($"{Schedules.Header}circuits:\n  - {{space: 1, breaker: 20 A}}\n");
        AddCircuit.In(file, NewCircuit.Of(new(2), "20 A", "Bench", NewLoad.Of("receptacle"))).After.ShouldNotBeNull()
            .Source.Text.ShouldEndWith(
                "  - {id: bench, space: 2, name: Bench, breaker: 20 A, loads: [{kind: receptacle}]}\n");
    }

    [Fact]
    public void A_second_circuit_of_the_same_name_gets_an_id_of_its_own() =>
        AddCircuit.In(Shed.Snapshot, NewCircuit.Of(new(3), "20 A", "Lights")).After.ShouldNotBeNull()
            .Schedule.ShouldNotBeNull().Circuits.Select(circuit => circuit.Id).ShouldBe(["lights", "lights-2", "pump"]);

    [Fact]
    public void A_removed_circuit_leaves_the_scenarios_that_named_it()
    {
        var after = RemoveCircuit.In(Shed.Snapshot, 1).After.ShouldNotBeNull().Schedule.ShouldNotBeNull();
        after.Circuits.ShouldHaveSingleItem().Id.ShouldBe("lights");
        after.Scenarios.ShouldHaveSingleItem().Running.ShouldBe(["lights"]);
        after.Scenarios[0].Starting.ShouldBeNull();
    }

    [Fact]
    public void A_scenario_that_ran_the_removed_circuit_alone_runs_nothing()
    {
        var file = Schedules.Snapshot(
            $"{Schedules.Header}circuits:\n  - {{id: a, space: 1, breaker: 20 A}}\n"
            + "scenarios:\n  - name: One\n    running: a\n");
        var after = RemoveCircuit.In(file, 0).After.ShouldNotBeNull().Schedule.ShouldNotBeNull();
        after.Scenarios.ShouldHaveSingleItem().RunsAll.ShouldBeFalse();
        after.Scenarios[0].Running.ShouldBeEmpty();
    }

    [Fact]
    public void A_load_is_added_after_the_others() =>
        Shed.Difference(AddLoad.In(Shed.Snapshot, 0, NewLoad.Of("receptacle")))
            .ShouldBe("+       - {kind: receptacle}");

    [Fact]
    public void With_the_last_load_goes_the_list() =>
        Shed.Difference(RemoveLoad.In(Shed.Snapshot, 0, 0))
            .ShouldBe("-     loads:\n-       - {kind: lighting, rating: 480 W}");

    [Fact]
    public void A_load_without_a_rating_is_refused() =>
        AddLoad.In(Shed.Snapshot, 0, NewLoad.Of("motor")).Refusal
            .ShouldBe("this load has no rating; give one, e.g. rating: 480 W");

    [Fact]
    public void A_load_takes_the_value_that_is_typed() =>
        Shed.Difference(SetField.In(Shed.Snapshot, Places.Load(1, 0).Then("start"), "code G"))
            .ShouldBe("-       - {kind: motor, rating: 1 hp}\n+       - {kind: motor, rating: 1 hp, start: code G}");

    [Fact]
    public void A_scenario_is_added_and_removed()
    {
        var added = AddScenario.In(Shed.Snapshot, "Dawn");
        Shed.Difference(added).ShouldBe("+   - name: Dawn\n+     running: all");
        RemoveScenario.In(added.After.ShouldNotBeNull(), 1).After.ShouldNotBeNull().Source.Text.ShouldBe(Shed.Text);
    }

    [Fact]
    public void A_file_with_errors_can_be_edited_as_long_as_no_error_is_added()
    {
        var broken = Schedules.Snapshot(Shed.Text.Replace("breaker: 15 A", "breaker: 15", StringComparison.Ordinal));
        MoveCircuits.In(broken, [new Hop(1, new SpaceNumber(8))]).IsPossible.ShouldBeTrue();
        SetField.In(broken, Places.Circuit(0).Then("breaker"), "15 A").After.ShouldNotBeNull()
            .HasErrors.ShouldBeFalse();
        SetField.In(broken, Places.Circuit(1).Then("id"), "lights").IsPossible.ShouldBeFalse();
    }

    [Fact]
    public void A_file_that_is_no_YAML_is_not_edited() =>
        MoveCircuits.In(Schedules.Snapshot("circuits: {"), [new Hop(0, new SpaceNumber(1))]).Refusal
            .ShouldBe("the file cannot be read as YAML; mend that first");
}
