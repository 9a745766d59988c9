using PanelTui.Documents.Reading.Fields;
using Terminal.Gui.Input;

namespace PanelTui.Tests.Screens;

/// <summary>Every key of the format from the face of the panel, typed as people write it.</summary>
public class FieldPagesTests
{
    [Fact]
    public void The_sections_of_the_file_are_one_key_from_the_face()
    {
        using var editor = OnExample("packing-shed");
        Golden.ShouldMatch(editor.Press(Key.A).Screen, "sections-80x24");
    }

    [Fact]
    public void A_section_is_two_keys_from_the_face_with_the_figures_beside_it()
    {
        using var editor = OnExample("packing-shed");
        Golden.ShouldMatch(editor.Press(Key.A, Key.S).Screen, "source-fields-80x24");
    }

    [Fact]
    public void While_a_value_is_typed_the_choices_stand_below_and_the_figures_follow()
    {
        using var editor = OnExample("packing-shed");
        editor.Press(Key.A, Key.F).Press(Key.Enter).Type("5");
        Golden.ShouldMatch(editor.Press(Key.CursorDown).Screen, "field-choices-80x24");
    }

    [Fact]
    public void Every_key_of_the_format_can_be_reached_and_opened()
    {
        using var editor = new OpenEditor(File.ReadAllText(Path.Combine(SourceTree.Root, "tests", "Cases", "reading", "every-key.yaml")), 120, 50);
        var reached = new HashSet<string>();
        foreach (var section in (string[])["panel", "code", "demand", "feeder", "transfer", "source"]) Walk(editor, reached, section, Key.A, new Key(section[0]));
        foreach (var (letter, list) in (IEnumerable<(char, string)>)[('b', "circuits[]"), ('n', "scenarios[]"), ('a', "accepted[]")])
            Walk(editor, reached, list, Key.A, new Key(letter), Key.Enter);
        editor.GoTo("1");
        Walk(editor, reached, "circuits[].loads[]", Key.L, Key.Enter);
        editor.Press(Key.A, Key.V).Keys.ShouldContain("done");
        FieldBook.All.Where(field => field.Shape is FieldShape.Value or FieldShape.List && field.Path != "schedule")
            .Select(field => $"{PageOf(field)}: {field.Title}").Except(reached).ShouldBeEmpty();
    }

    [Theory]
    [InlineData("20", "breaker: 20 A")]
    [InlineData("25A", "breaker: 25 A")]
    [InlineData("30 amps", "breaker: 30 A")]
    public void A_rating_is_written_as_the_format_wants_it(string typed, string written)
    {
        using var editor = new OpenEditor();
        editor.GoTo("1").Press(Key.Enter, Key.Tab).Type(typed).Press(Key.Enter).Session.Now.Source.Text
            .ShouldBe(Shed.Text.Replace("breaker: 15 A\n", $"{written}\n", StringComparison.Ordinal).Replace(
                $"name: Fan, {written}", "name: Fan, breaker: 15 A", StringComparison.Ordinal));
    }

    [Fact]
    public void A_number_that_could_have_several_units_is_offered_with_the_likeliest_and_enter_takes_it()
    {
        using var editor = new OpenEditor();
        editor.GoTo("1").Press(Key.L, Key.N).Type("other").Press(Key.Enter).Type("1500").Press(Key.Enter);
        editor.Screen.ShouldContain("! \"1500\" could be 1500 W: Enter takes it; or 1500 VA, 1500 A");
        editor.Press(Key.Enter).Session.Now.Source.Text.ShouldContain("- {kind: other, rating: 1500 W}");
    }

    [Fact]
    public void A_kind_begun_is_finished_by_tab_and_the_next_tab_goes_on()
    {
        using var editor = new OpenEditor();
        editor.GoTo("1").Press(Key.L, Key.N).Type("wat").Press(Key.Tab, Key.Tab).Type("4500 W").Press(Key.Enter);
        editor.Session.Here!.Loads.Length.ShouldBe(2);
        editor.Screen.ShouldContain("water-heater   4500 W");
    }

    [Fact]
    public void Arrows_choose_among_what_is_offered()
    {
        using var editor = new OpenEditor();
        editor.GoTo("1").Press(Key.A, Key.E).Press([.. Enumerable.Repeat(Key.CursorDown, 5)]);
        editor.Press(Key.Enter, Key.CursorDown, Key.CursorDown, Key.CursorDown, Key.Enter).Session.Now.Source.Text.ShouldContain("    protection: afci\n");
    }

    [Fact]
    public void A_bad_entry_stays_with_the_sentence_beside_it_and_giving_up_changes_nothing()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.A, Key.P, Key.End, Key.Enter).Type("maybe").Press(Key.Enter);
        editor.Screen.ShouldContain("! neutral_bonded is \"maybe\"; write yes or no");
        editor.Screen.ShouldContain("Neutral bonded here maybe");
        editor.Press(Key.Esc).Session.Now.Source.Text.ShouldBe(Shed.Text);
    }

    [Fact]
    public void Keys_that_make_sense_only_together_are_asked_for_together()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.A, Key.S).Choose("Charging");
        editor.Press(Key.Enter).Type("3 kW").Press(Key.Enter).Type("25").Press(Key.Enter).Type("90").Press(Key.Enter);
        editor.Session.Now.Source.Text.ShouldContain("charging: {power: 3 kW, starts_at: 25 %, stops_at: 90 %}");
        editor.Press(Key.U).Session.Now.Source.Text.ShouldBe(Shed.Text);
    }

    [Fact]
    public void Del_clears_a_value_or_says_why_it_cannot()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.A, Key.P).Choose("System").Press(Key.Delete).Screen.ShouldContain("! system cannot be left out");
        editor.Choose("Bus").Press(Key.Delete).Session.Now.Source.Text.ShouldNotContain("bus: 100 A");
    }

    [Fact]
    public void A_scenario_is_added_given_its_circuits_and_removed()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.A, Key.N, Key.N).Type("Morning").Press(Key.Enter).Press(Key.CursorDown, Key.Enter);
        editor.Press(Key.CursorDown, Key.Enter).Type("lights, pu").Press(Key.Tab, Key.Enter);
        editor.Session.Now.Source.Text.ShouldContain("{name: Morning, running: [lights, pump]}");
        editor.Press(Key.Esc, Key.Delete).Session.Schedule.Scenarios.Length.ShouldBe(1);
    }

    [Fact]
    public void A_scenario_is_copied_with_all_that_it_says_and_a_name_of_its_own()
    {
        using var editor = new OpenEditor(Shed.Text.Replace("{name: Night, running: all}", "{name: Night, running: [lights, pump], except: [lights], starting: pump}", StringComparison.Ordinal));
        editor.Press(Key.A, Key.N, Key.CursorDown, Key.C, Key.C);
        editor.Session.Now.Source.Text.ShouldContain("- {name: Night 2, running: [lights, pump], except: [lights], starting: pump}");
        editor.Session.Schedule.Scenarios.Select(scenario => scenario.Name).ShouldBe(["Night", "Night 3", "Night 2"]);
    }

    [Fact]
    public void Scenarios_are_copied_to_another_schedule_with_all_that_they_say()
    {
        var text = Shed.Text.Replace("{name: Night, running: all}", "{name: Night, running: [lights, pump], starting: pump}", StringComparison.Ordinal);
        using var editor = new OpenEditor(text, 120, 40);
        editor.Press(Key.A, Key.N, Key.C.WithShift).Copied.ShouldBe(["name\trunning\tstarting\nNight\tlights, pump\tpump"]);
        editor.Press(Key.Delete).Paste($"{editor.Copied[0]}\nStorm\t\t");
        editor.Screen.ShouldContain("Night                running lights, pump, starting pump");
        editor.Screen.ShouldContain("Storm                running all");
    }

    [Fact]
    public void A_load_is_copied_with_all_that_it_says()
    {
        using var editor = new OpenEditor();
        editor.GoTo("2").Press(Key.L, Key.C).Session.Now.Source.Text.ShouldContain("loads: [{kind: motor, rating: 1 hp, running: 1100 W}, {kind: motor, rating: 1 hp, running: 1100 W}]");
        editor.Press(Key.C.WithShift).Copied.ShouldBe(["kind\trating\trunning\nmotor\t1 hp\t1100 W\nmotor\t1 hp\t1100 W"]);
        editor.Press(Key.U).Session.Now.Source.Text.ShouldBe(Shed.Text);
    }

    [Fact]
    public void A_finding_is_accepted_for_a_reason()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.A, Key.A, Key.N).Type("legs-uneven").Press(Key.Enter, Key.Enter).Type("the fan runs an hour a day").Press(Key.Enter);
        editor.Session.Schedule.Accepted.ShouldHaveSingleItem().Because.ShouldBe("the fan runs an hour a day");
    }

    [Fact]
    public void Tab_takes_a_value_and_opens_the_next_so_that_a_page_is_filled_in_without_leaving_the_keys()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.A, Key.F, Key.Enter, Key.Tab).Type("6 AWG cu").Press(Key.Tab).Type("75").Press(Key.Tab, Key.Tab).Type("45'").Press(Key.Enter);
        editor.Session.Now.Source.Text.ShouldContain("feeder: {ocpd: 50 A, conductor: 6 AWG Cu, insulation: 75 C, length: 45 ft}");
    }

    [Fact]
    public void A_step_of_a_form_that_cannot_stand_is_told_before_the_next()
    {
        using var editor = new OpenEditor();
        editor.GoTo("5").Press(Key.D1).Type("Radio").Press(Key.Enter).Type("20 V").Press(Key.Enter);
        editor.Screen.ShouldContain("! breaker is \"20 V\", a voltage; a current in A or kA is expected");
        editor.Press(Key.Backspace).Type("A").Press(Key.Enter, Key.Enter).Session.Here!.Breaker.Rating.Value.ShouldBe(20);
    }

    [Fact]
    public void Rows_of_a_spreadsheet_become_loads_in_one_step_of_undo()
    {
        using var editor = new OpenEditor();
        editor.GoTo("3").Press(Key.L).Paste("Kind\tRating\tRunning\tDuty\nother\t900W\t700 W\t50\nlighting\t120W\t90W\t25 %\nmotor\t1/2 hp\t600 W\t5\n");
        editor.Session.Here!.Loads.Length.ShouldBe(4);
        editor.Session.Now.Source.Text.ShouldContain("{kind: motor, rating: 1/2 hp, running: 600 W, duty: 5 %}");
        editor.Press(Key.U).Session.Now.Source.Text.ShouldBe(Shed.Text);
    }

    [Fact]
    public void Rows_of_a_spreadsheet_become_breakers_or_are_refused_as_a_whole()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.A, Key.B).Paste("5\t20A\tYard pump\n6\tlots\tYard light\n").Screen.ShouldContain("breaker is \"lots\"");
        editor.Session.Now.Source.Text.ShouldBe(Shed.Text);
        editor.Paste("space\tbreaker\tname\tload\n5\t20A\tYard pump\tmotor 1/2 hp\n6\t15A\tYard light\tlighting 90 W\n");
        editor.Session.Schedule.Circuits.Count(circuit => circuit.Name.StartsWith("Yard", StringComparison.Ordinal)).ShouldBe(2);
    }

    [Fact]
    public void A_figure_typed_on_a_row_takes_the_place_of_what_stood_there()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.A, Key.F).Type("60").Press(Key.Enter).Session.Now.Source.Text.ShouldContain("feeder: {ocpd: 60 A}");
    }

    [Fact]
    public void Turning_goes_from_section_to_section_and_from_breaker_to_breaker()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.A, Key.P, Key.CursorRight).Screen.ShouldContain("Code in force");
        editor.Press(Key.Esc, Key.B, Key.Enter, Key.CursorRight).Screen.ShouldContain("Space 2: Well pump");
    }

    /// <summary>Battery, charging and sun stand on the page of the source.</summary>
    private static string PageOf(Field field) => field.Owner.StartsWith("source", StringComparison.Ordinal) ? "source" : field.Owner;

    private static void Walk(OpenEditor editor, HashSet<string> reached, string page, params Key[] way)
    {
        editor.Press(way);
        for (var row = 0; row < 30; row++)
        {
            var key = editor.Screen.Split('\n')[^4].Trim().Split(':')[0];
            editor.Press(Key.Enter);
            if (editor.Keys.Contains("give up", StringComparison.Ordinal)) reached.Add($"{page}: {key}");
            editor.Press(Key.Esc, Key.CursorDown);
        }

        editor.Press(Key.Esc, Key.Esc, Key.Esc);
    }

    private static OpenEditor OnExample(string name) => new(File.ReadAllText(Shed.Example(name)));
}
