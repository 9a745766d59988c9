using Terminal.Gui.Input;

namespace PanelTui.Tests.Screens;

/// <summary>Commands and circuits found by typing, breakers copied, and what the mouse does.</summary>
public class FindingOnesWayTests
{
    [Fact]
    public void Every_command_is_found_by_a_part_of_its_name_and_enter_runs_it()
    {
        using var editor = new OpenEditor();
        editor.Press(new Key(':')).Screen.ShouldContain("Undo: Nothing has been changed yet");
        editor.Type("find a cir").Press(Key.Enter).Screen.ShouldContain("Find a circuit: type a part of it (6 circuits)");
    }

    [Fact]
    public void The_list_of_commands_at_80_by_24()
    {
        using var editor = new OpenEditor(File.ReadAllText(Shed.Example("packing-shed")));
        Golden.ShouldMatch(editor.Press(new Key(':')).Screen, "commands-80x24");
    }

    [Fact]
    public void A_command_that_cannot_run_says_why_and_nothing_matches_is_said_too()
    {
        using var editor = new OpenEditor();
        editor.Press(new Key(':')).Type("undo").Press(Key.Enter).Screen.ShouldContain("Nothing has been changed yet");
        editor.Type("xyz").Screen.ShouldContain("No command has undoxyz in its name, key or use.");
        editor.Press(Key.Backspace, Key.Backspace, Key.Backspace).Screen.ShouldContain("Commands with: undo");
    }

    [Fact]
    public void A_circuit_is_found_by_its_load()
    {
        using var editor = new OpenEditor();
        editor.Press(new Key('/')).Type("hp").Screen.ShouldContain("Circuits with: hp (1 of 6)");
        editor.Press(Key.Enter).Session.Cursor.ToString().ShouldBe("2");
    }

    [Fact]
    public void A_copied_breaker_is_put_into_open_spaces_with_an_id_of_its_own()
    {
        using var editor = new OpenEditor();
        editor.GoTo("2").Press(Key.C).GoTo("6").Press(Key.P);
        editor.Session.Here!.Id.ShouldBe("well-pump");
        editor.Session.Here.Breaker.Poles.ShouldBe(2);
        editor.Session.Here.Loads.ShouldBe(editor.Session.Schedule.Circuits[1].Loads);
        editor.Press(Key.U).Session.Now.Source.Text.ShouldBe(Shed.Text);
    }

    [Fact]
    public void A_copy_is_refused_where_it_does_not_fit()
    {
        using var editor = new OpenEditor();
        editor.GoTo("9").Press(Key.P).Screen.ShouldContain("No breaker has been copied yet");
        editor.GoTo("2").Press(Key.C).GoTo("9").Press(Key.P).Screen.ShouldContain("would meet Fan");
        editor.GoTo("1").Press(Key.P).Screen.ShouldContain("Space 1 holds Shed lights");
    }

    [Fact]
    public void A_circuits_line_goes_to_the_clipboard_of_the_terminal()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.C.WithShift).Copied.ShouldBe(["1 · leg A · Shed lights · 15 A one-pole · lighting 480 W"]);
        editor.Press(Key.Y, Key.C.WithShift).Copied[1].Split('\n')[0].ShouldBe("Connected load");
    }

    [Fact]
    public void A_click_on_a_figure_asks_how_it_came_about()
    {
        using var editor = new OpenEditor();
        var row = Array.FindIndex(editor.Screen.Split('\n'), line => line.Contains("Imbalance", StringComparison.Ordinal));
        editor.Click(60, row).Screen.ShouldContain("Why imbalance");
    }

    [Fact]
    public void A_breaker_is_dragged_to_another_space_and_undo_brings_it_back()
    {
        using var editor = new OpenEditor();
        editor.Drag(10, 2, 10, 4).Session.Schedule.Circuits[0].Space.ToString().ShouldBe("5");
        editor.Press(Key.U).Session.Now.Source.Text.ShouldBe(Shed.Text);
    }

    [Fact]
    public void A_breaker_dragged_where_it_does_not_fit_stays_in_the_hand_with_the_reason()
    {
        using var editor = new OpenEditor();
        editor.GoTo("2").Drag(40, 2, 10, 7).Screen.ShouldContain("Does not fit");
        editor.Press(Key.Esc).Session.Now.Source.Text.ShouldBe(Shed.Text);
    }

    [Fact]
    public void The_wheel_walks_the_face_and_a_page()
    {
        using var editor = new OpenEditor();
        editor.WheelDown(10, 3).Session.Cursor.ToString().ShouldBe("3");
        editor.Press(Key.Y).WheelDown(10, 3).Screen.ShouldContain("Why connected");
    }

    [Fact]
    public void A_letter_that_cannot_be_seen_is_shown_by_its_number_in_a_field_and_kept_in_the_file()
    {
        using var editor = new OpenEditor(Shed.Text.Replace("Shed lights ", "\"Shed\\u202E lights\" ", StringComparison.Ordinal));
        editor.Press(Key.Enter).Screen.ShouldContain("⟨U+202E⟩ lights");
        editor.Press(Key.End).Type("!").Press(Key.Enter).Session.Here!.Name.ShouldBe("Shed\u202E lights!");
    }

    [Fact]
    public void The_terminals_own_cursor_stands_on_what_is_chosen()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.CursorDown).CursorAt.ShouldBe(new System.Drawing.Point(0, 3));
        editor.Press(Key.Y, Key.CursorDown).CursorAt!.Value.X.ShouldBe(2);
        editor.Press(Key.Esc, Key.Enter).CursorAt!.Value.Y.ShouldBe(20);
        editor.Press(Key.Esc, Key.CursorUp).CursorAt.ShouldBe(new System.Drawing.Point(0, 2));
    }
}
