using Terminal.Gui.Input;

namespace PanelTui.Tests.Screens;

public class EditorTests
{
    [Fact]
    public void The_file_opens_on_the_face_of_the_panel_with_its_figures()
    {
        using var editor = new OpenEditor();
        editor.Screen.ShouldContain("Test shed · 120/240 V 1ph 3W");
        editor.Screen.ShouldContain("Shed lights");
        editor.Screen.ShouldContain("Imbalance         10.6 %");
        editor.Keys.ShouldBe(" Enter edit  Space carry  a fields  : commands  ? keys  q quit  y why  d remove");
    }

    [Fact]
    public void A_one_pole_breaker_takes_four_keys_beyond_the_text_typed()
    {
        using var editor = new OpenEditor();
        editor.GoTo("5").Press(Key.D1).Type("Yard light").Press(Key.Enter, Key.Enter).Type("lighting 100 W, continuous").Press(Key.Enter);
        editor.Session.Schedule.Circuits.Single(circuit => circuit.Name == "Yard light").Loads.Single().Continuous.ShouldBeTrue();
        editor.Screen.ShouldContain("Done: Add Yard light at 5");
    }

    [Fact]
    public void A_two_pole_breaker_takes_two_spaces_of_one_side()
    {
        using var editor = new OpenEditor();
        editor.GoTo("5").Press(Key.D2).Type("Water heater").Press(Key.Enter).Type("30 A").Press(Key.Enter).Type("water-heater 4500 W").Press(Key.Enter);
        string.Join(' ', editor.Session.Here!.Spaces).ShouldBe("5 7");
    }

    [Fact]
    public void At_the_taken_half_of_a_tandem_the_open_half_is_named()
    {
        using var editor = new OpenEditor(Shed.Text.Replace(
            "  - {id: lamp, space: 11b, name: Lamp, breaker: 15 A, loads: [{kind: lighting, rating: 40 W}]}\n", "", StringComparison.Ordinal));
        editor.GoTo("11a").Press(Key.T).Screen.ShouldContain("Space 11a holds Fan; 11b is open: go there, then t");
    }

    [Fact]
    public void A_tandem_breaker_goes_where_the_listing_allows_it_alone()
    {
        using var editor = new OpenEditor(Shed.Text.Replace("  - {space: 12, name: Spare, breaker: 20 A, spare: yes}\n", "", StringComparison.Ordinal));
        editor.GoTo("12").Press(Key.T).Type("Radio").Press(Key.Enter, Key.Enter, Key.Enter);
        editor.Session.Here!.Space.ToString().ShouldBe("12a");
        editor.GoTo("5").Press(Key.T).Screen.ShouldContain("Space 5 is not one where the listing allows tandem breakers");
    }

    [Fact]
    public void A_breaker_with_more_poles_than_the_panel_has_legs_is_refused_with_the_reason()
    {
        using var editor = new OpenEditor();
        editor.GoTo("5").Press(Key.D3).Screen.ShouldContain("120/240 V 1ph 3W has 2 legs: no breaker here has 3 poles");
    }

    [Fact]
    public void While_a_breaker_is_carried_the_figures_already_show_what_the_drop_would_do()
    {
        using var editor = new OpenEditor();
        editor.GoTo("1").Press(Key.Space, Key.CursorDown);
        editor.Screen.ShouldContain("Drop Shed lights at 3; Bench receptacles to 1");
        editor.Screen.ShouldContain("Imbalance   10.6 → 4.3 %");
        editor.OnDisk.ShouldBe(Shed.Text);
        editor.Session.IsSaved.ShouldBeTrue();
    }

    [Fact]
    public void The_drop_is_what_was_shown_and_one_undo_takes_it_back()
    {
        using var editor = new OpenEditor();
        editor.GoTo("1").Press(Key.Space, Key.CursorDown);
        var shown = editor.Session.Preview!.Source.Text;
        editor.Press(Key.Enter).Session.Now.Source.Text.ShouldBe(shown);
        editor.Press(Key.U).Session.Now.Source.Text.ShouldBe(Shed.Text);
        editor.Press(Key.R).Session.Now.Source.Text.ShouldBe(shown);
    }

    [Fact]
    public void A_breaker_that_does_not_fit_stays_in_the_hand_and_says_why()
    {
        using var editor = new OpenEditor();
        editor.GoTo("1").Press(Key.Space).Press(Key.CursorRight, Key.CursorDown, Key.Enter);
        editor.Screen.ShouldContain("Does not fit: Well pump takes 2 and 4: only a part of it is in the way");
        editor.Session.Hand.ShouldNotBeNull();
        editor.Press(Key.Esc).Session.Now.Source.Text.ShouldBe(Shed.Text);
        editor.Session.Cursor.ToString().ShouldBe("1");
    }

    [Fact]
    public void A_bad_unit_stays_in_its_field_with_the_reason_until_it_is_mended()
    {
        using var editor = new OpenEditor();
        editor.GoTo("1").Press(Key.Enter, Key.Tab).Type("20 V").Press(Key.Enter);
        editor.Screen.ShouldContain("! breaker is \"20 V\", a voltage; a current in A or kA is expected");
        editor.Press(Key.Backspace).Type("A").Press(Key.Enter).Session.Now.Source.Text
            .ShouldBe(Shed.Text.Replace("breaker: 15 A\n", "breaker: 20 A\n", StringComparison.Ordinal));
    }

    [Fact]
    public void Giving_a_form_up_changes_nothing()
    {
        using var editor = new OpenEditor();
        editor.GoTo("1").Press(Key.Enter).Type("Other").Press(Key.Esc).Session.Now.Source.Text.ShouldBe(Shed.Text);
        editor.Screen.ShouldContain("Shed lights");
    }

    [Fact]
    public void A_load_is_edited_in_words_and_only_its_line_changes()
    {
        using var editor = new OpenEditor();
        editor.GoTo("1").Press(Key.Enter, Key.Tab, Key.Tab, Key.Tab).Type("lighting 600 W, continuous; other 20 W").Press(Key.Enter);
        editor.Session.Now.Source.Text.ShouldBe(Shed.Text.Replace(
            "      - {kind: lighting, rating: 480 W}\n",
            "      - {kind: lighting, rating: 600 W, continuous: yes}\n      - {kind: other, rating: 20 W}\n",
            StringComparison.Ordinal));
    }

    [Fact]
    public void Removing_needs_no_question_since_undo_brings_it_back()
    {
        using var editor = new OpenEditor();
        editor.GoTo("2").Press(Key.D).Session.Here.ShouldBeNull();
        editor.Press(Key.Z.WithCtrl).Session.Now.Source.Text.ShouldBe(Shed.Text);
    }

    [Fact]
    public void Control_Z_undoes_and_says_so_the_first_time_for_whoever_meant_to_suspend()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.Z.WithCtrl).Screen.ShouldContain("Nothing has been changed yet; Z suspends to the shell");
        editor.GoTo("2").Press(Key.D, Key.Z.WithCtrl).Session.Message.ShouldEndWith(". Ctrl+Z and u undo; Z suspends to the shell");
        editor.GoTo("2").Press(Key.D, Key.Z.WithCtrl).Session.Message.ShouldNotContain("suspends");
        editor.Press(new Key(':')).Type("suspend").Screen.ShouldContain("Suspend to the shell; fg comes back");
    }

    [Fact]
    public void A_key_that_can_do_nothing_says_why()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.U).Screen.ShouldContain("Nothing has been changed yet");
        editor.GoTo("5").Press(Key.D).Screen.ShouldContain("Space 5 is open: there is no breaker to remove");
    }

    [Fact]
    public void Saving_writes_the_file_and_undoing_back_to_it_is_unchanged_again()
    {
        using var editor = new OpenEditor();
        editor.GoTo("2").Press(Key.D).Screen.ShouldContain("· changed");
        editor.Press(Key.S.WithCtrl).OnDisk.ShouldNotContain("Well pump");
        editor.Screen.ShouldNotContain("· changed");
        editor.Press(Key.U).Screen.ShouldContain("· changed");
        editor.Press(Key.R).Screen.ShouldNotContain("· changed");
    }

    [Fact]
    public void A_file_that_changed_underneath_is_not_overwritten()
    {
        using var editor = new OpenEditor();
        editor.GoTo("2").Press(Key.D);
        File.WriteAllText(editor.File, Shed.Text + "# someone else was here\n");
        editor.Press(Key.S.WithCtrl).OnDisk.ShouldEndWith("# someone else was here\n");
        editor.Session.IsSaved.ShouldBeFalse();
        editor.Screen.ShouldContain("changed");
    }

    [Fact]
    public void Saving_under_another_name_keeps_both()
    {
        using var editor = new OpenEditor();
        editor.GoTo("2").Press(Key.D, Key.W).Type(editor.File + ".new").Press(Key.Enter);
        File.ReadAllText(editor.File + ".new").ShouldNotContain("Well pump");
        editor.OnDisk.ShouldBe(Shed.Text);
        editor.Session.IsSaved.ShouldBeTrue();
    }

    [Fact]
    public void Leaving_with_unsaved_changes_asks_first()
    {
        using var editor = new OpenEditor();
        editor.GoTo("2").Press(Key.D, Key.Q).HasEnded.ShouldBeFalse();
        editor.Keys.ShouldBe(" s save and quit  d quit and lose the changes  Esc stay");
        editor.Press(Key.Esc).HasEnded.ShouldBeFalse();
        editor.Press(Key.Q, Key.S).HasEnded.ShouldBeTrue();
        editor.OnDisk.ShouldNotContain("Well pump");
    }

    [Fact]
    public void Leaving_an_unchanged_file_asks_nothing()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.Q).HasEnded.ShouldBeTrue();
        editor.OnDisk.ShouldBe(Shed.Text);
    }

    [Fact]
    public void Esc_never_ends_the_program()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.Esc, Key.Esc).HasEnded.ShouldBeFalse();
    }

    /// <summary>A name that is longer than its field: wherever it is cut, it says so.</summary>
    [Fact]
    public void A_long_text_shows_where_it_goes_on()
    {
        using var editor = new OpenEditor(Shed.Text.Replace("name: Shed lights ", "name: Lights of the shed along the whole of the western wall ", StringComparison.Ordinal));
        editor.Press(Key.Enter).Screen.ShouldContain("Name …");
        editor.Press(Key.Home).Screen.ShouldMatch("Name Lights of [a-z ]*…");
    }

    [Fact]
    public void The_next_finding_is_one_key_away_and_said_in_full()
    {
        using var editor = new OpenEditor(Shed.Text.Replace("space: 3,", "space: 1,", StringComparison.Ordinal));
        editor.Press(Key.CursorDown, Key.F).Session.Cursor.ToString().ShouldBe("1");
        editor.Screen.ShouldContain("takes space 1, which");
        var finding = editor.Session.Assessment.Findings[0];
        editor.Session.Message.ShouldBe($"E {finding.Message} {finding.Mend} ({finding.Cite})");
        finding.Message.ShouldEndWith(".");
    }

    [Fact]
    public void A_click_goes_there_and_a_click_on_the_cursor_opens_it()
    {
        using var editor = new OpenEditor();
        editor.Click(10, 3).Session.Cursor.ToString().ShouldBe("3");
        editor.Click(10, 3).Keys.ShouldBe(" Enter done  Tab next field  Esc give up  typing replaces  → keeps");
    }

    [Fact]
    public void A_window_that_is_too_small_says_so_and_comes_back()
    {
        using var editor = new OpenEditor();
        editor.Resize(30, 8).Screen.ShouldContain("The window is too small");
        editor.Resize(80, 24).Screen.ShouldContain("Shed lights");
    }

    [Fact]
    public void Moving_the_cursor_costs_one_write_and_few_bytes()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.CursorDown).Cost.Writes.ShouldBe(1);
        editor.Cost.Bytes.ShouldBeLessThan(400);
    }
}
