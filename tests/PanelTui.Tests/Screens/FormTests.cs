using Terminal.Gui.Input;

namespace PanelTui.Tests.Screens;

/// <summary>The fields of a form under the keys and the pastes of people who know other fields.</summary>
public class FormTests
{
    [Fact]
    public void A_paste_that_no_field_could_hold_is_told_and_changes_nothing_and_esc_leaves()
    {
        using var editor = new OpenEditor();
        editor.GoTo("1").Press(Key.Enter).Paste(new string('x', 1_000_000));
        editor.Screen.ShouldContain("! a field holds 2,000 characters at most, and this would make 1,000,000:");
        editor.Screen.ShouldContain("Name Shed lights");
        editor.Press(Key.Esc).Keys.ShouldNotContain("give up");
        editor.Session.Now.Source.Text.ShouldBe(Shed.Text);
    }

    [Fact]
    public void A_paste_is_one_edit_with_one_look_at_what_it_would_do()
    {
        using var editor = new OpenEditor();
        editor.GoTo("1").Press(Key.Enter);
        var looks = 0;
        editor.Session.Changed += () => looks++;
        editor.Paste("Old barn lights along the north wall and above the sorting tables");
        looks.ShouldBe(1);
        editor.Press(Key.Enter).Session.Here!.Name.ShouldBe("Old barn lights along the north wall and above the sorting tables");
    }

    [Fact]
    public void Lines_that_are_pasted_into_a_field_become_one()
    {
        using var editor = new OpenEditor();
        editor.GoTo("1").Press(Key.Enter).Paste("Barn\nlights\r\n").Press(Key.Enter).Session.Here!.Name.ShouldBe("Barn lights");
    }

    [Fact]
    public void A_full_field_takes_no_more_letters_and_says_so()
    {
        using var editor = new OpenEditor();
        editor.GoTo("1").Press(Key.Enter).Paste(new string('x', 2_000)).Type("y");
        editor.Screen.ShouldContain("! a field holds 2,000 characters at most, and this would make 2,001:");
        editor.Press(Key.Backspace).Screen.ShouldNotContain("2,001");
    }

    [Fact]
    public void The_foot_tells_that_typing_replaces_what_stands_and_that_the_arrow_keeps_it()
    {
        using var editor = new OpenEditor();
        editor.GoTo("1").Press(Key.Enter).Keys.ShouldContain("typing replaces  → keeps");
        editor.Press(Key.CursorRight).Keys.ShouldNotContain("typing replaces");
        editor.Type(" west").Press(Key.Enter).Session.Here!.Name.ShouldBe("Shed lights west");
        editor.Press(Key.Enter).Type("Barn").Press(Key.Enter).Session.Here!.Name.ShouldBe("Barn");
    }

    [Theory]
    [InlineData("home", "typing replaces")]
    [InlineData("left", "typing replaces")]
    public void Any_other_way_to_keep_it_is_seen_on_the_foot_too(string way, string gone)
    {
        using var editor = new OpenEditor();
        editor.GoTo("1").Press(Key.Enter, way == "home" ? Key.Home : Key.CursorLeft).Keys.ShouldNotContain(gone);
    }

    [Fact]
    public void Control_u_k_and_w_take_away_what_they_take_away_on_a_command_line()
    {
        using var editor = new OpenEditor();
        editor.GoTo("1").Press(Key.Enter, Key.CursorRight, Key.W.WithCtrl).Type("lamps");
        NameIs(editor, "Shed lamps");
        editor.Press(Key.Enter, Key.CursorRight, Key.CursorLeft, Key.CursorLeft, Key.U.WithCtrl);
        NameIs(editor, "ps");
        editor.Press(Key.Enter, Key.Home, Key.K.WithCtrl).Type("Barn");
        NameIs(editor, "Barn");
        editor.Press(Key.Enter, Key.U.WithCtrl).Type("Yard");
        NameIs(editor, "Yard");
    }

    [Fact]
    public void Enter_and_tab_stand_on_the_foot_as_what_they_do()
    {
        using var editor = new OpenEditor();
        editor.GoTo("5").Press(Key.D1).Keys.ShouldContain("Enter next  Tab next field");
        editor.Type("Radio").Press(Key.Enter, Key.Enter).Keys.ShouldContain("Enter done");
        editor.Press(Key.Esc, Key.A, Key.F, Key.Enter).Keys.ShouldContain("Enter done  Tab done, next row");
        editor.Press(Key.Esc, Key.Esc, Key.Esc, Key.W).Keys.ShouldNotContain("Tab");
        editor.Press(Key.Tab).Keys.ShouldContain("give up");
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(60, 18)]
    public void What_a_load_looks_like_is_told_in_one_row_that_is_not_cut(int columns, int rows)
    {
        using var editor = new OpenEditor(columns: columns, rows: rows);
        editor.GoTo("5").Press(Key.D1).Type("Radio").Press(Key.Enter, Key.Enter);
        editor.Screen.ShouldContain("\n like motor 1/2 hp, or several: lighting 480 W, continuous\n");
        editor.Type("zzz").Screen.Split('\n')[^2].Trim().ShouldBeEmpty();
    }

    [Theory]
    [InlineData("1/2 hp", "{kind: motor, rating: 1/2 hp}")]
    [InlineData("fridge 700 W", "{kind: appliance, rating: 700 W}")]
    [InlineData("well pump 1 hp, running 900 W", "{kind: motor, rating: 1 hp, running: 900 W}")]
    [InlineData("water heater 4500W", "{kind: water-heater, rating: 4500 W}")]
    [InlineData("lighting 90 W continuous", "{kind: lighting, rating: 90 W, continuous: yes}")]
    [InlineData("lights 90 W; 1/3 hp", "{kind: motor, rating: 1/3 hp}")]
    public void A_load_as_people_write_it_is_written_as_the_format_has_it(string typed, string written)
    {
        using var editor = new OpenEditor();
        HangWith(editor, typed).Session.Now.Source.Text.ShouldContain(written);
        editor.Press(Key.U).Session.Now.Source.Text.ShouldBe(Shed.Text);
    }

    [Theory]
    [InlineData("1500", "\"1500\" could be other 1500 W: Enter takes it; or other 1500 VA, other 1500 A", "{kind: other, rating: 1500 W}")]
    [InlineData("motor 2", "\"motor 2\" could be motor 2 hp: Enter takes it", "{kind: motor, rating: 2 hp}")]
    [InlineData("compressor 2 hp", "\"compressor 2 hp\" could be motor 2 hp: Enter takes it", "{kind: motor, rating: 2 hp}")]
    [InlineData("lightning 90 W", "\"lightning 90 W\" could be lighting 90 W: Enter takes it", "{kind: lighting, rating: 90 W}")]
    [InlineData("fridge", "\"fridge\" is often appliance 6 A, running 180 W, duty 35 % (common practice,", "{kind: appliance, rating: 6 A, running: 180 W, duty: 35 %}")]
    public void A_load_that_can_be_guessed_is_offered_and_enter_takes_it(string typed, string offered, string written)
    {
        using var editor = new OpenEditor();
        HangWith(editor, typed).Screen.ShouldContain($"! {offered}");
        editor.Session.Now.Source.Text.ShouldBe(Shed.Text);
        editor.Press(Key.Enter).Session.Now.Source.Text.ShouldContain(written);
    }

    [Fact]
    public void A_load_that_cannot_be_told_is_answered_with_how_one_is_written_whole_on_the_row()
    {
        using var editor = new OpenEditor();
        HangWith(editor, "gizmo 700 W").Screen
            .ShouldContain("\n ! write it like motor 1/2 hp, appliance 700 W or lighting 480 W, continuous\n");
    }

    [Fact]
    public void The_form_of_a_breaker_that_hangs_reads_its_loads_in_the_same_way()
    {
        using var editor = new OpenEditor();
        editor.GoTo("3").Press(Key.Enter, Key.Tab, Key.Tab, Key.Tab).Type("1/2 hp").Press(Key.Enter).Session.Now.Source.Text.ShouldContain("{kind: motor, rating: 1/2 hp}");
        editor.Press(Key.Enter, Key.Tab, Key.Tab, Key.Tab).Type("1500").Press(Key.Enter).Screen.ShouldContain("could be other 1500 W: Enter takes it");
    }

    [Fact]
    public void A_kind_that_is_none_is_told_in_a_sentence_that_fits_and_a_usual_load_is_offered_as_its_kind()
    {
        using var editor = new OpenEditor();
        editor.GoTo("1").Press(Key.L, Key.N).Type("gizmo").Press(Key.Enter).Screen.ShouldContain("! \"gizmo\" is not one of the 17 to choose from, which ↓ goes through\n");
        editor.Press(Key.U.WithCtrl).Type("fridge").Press(Key.Enter).Screen.ShouldContain("! \"fridge\" could be appliance: Enter takes it");
    }

    [Fact]
    public void A_page_names_its_rows_as_they_are_called_there()
    {
        using var editor = new OpenEditor();
        editor.GoTo("1").Press(Key.L, Key.Enter).Screen.ShouldContain(" Kind: what the load is, for demand factors and rules; one of lighting,");
        editor.Press(Key.Esc, Key.Esc, Key.A, Key.E).Choose("Loads").Screen.ShouldContain("Enter opens the list.");
    }

    private static OpenEditor HangWith(OpenEditor editor, string load) =>
        editor.GoTo("5").Press(Key.D1).Type("Test").Press(Key.Enter, Key.Enter).Type(load).Press(Key.Enter);

    private static void NameIs(OpenEditor editor, string name) => editor.Press(Key.Enter).Session.Here!.Name.ShouldBe(name);
}
