using Terminal.Gui.Input;

namespace PanelTui.Tests.Screens;

/// <summary>All breakers as a table: typed into, marked, sorted, narrowed down.</summary>
public class TablePageTests
{
    private static readonly Key Set = new('=');
    private static readonly Key All = new('+');
    private static readonly Key None = new('-');
    private static readonly Key Ditto = new('"');

    [Theory]
    [InlineData("packing-shed", 60, 18)]
    [InlineData("packing-shed", 80, 24)]
    [InlineData("market-hall", 120, 40)]
    public void One_key_from_the_face_shows_every_breaker_as_a_row(string example, int columns, int rows)
    {
        using var editor = OnExample(example, columns, rows);
        Golden.ShouldMatch(editor.Press(Key.T.WithShift).Screen, $"table-{columns}x{rows}");
    }

    [Fact]
    public void The_headings_and_the_figures_stay_in_sight_at_the_foot_of_a_tall_panel()
    {
        using var editor = OnExample("market-hall");
        var head = editor.Press(Key.T.WithShift).Screen.Split('\n')[2..4];
        var foot = editor.Press(Key.End).Screen.Split('\n');
        foot[2..4].ShouldBe(head);
        foot[1].ShouldEndWith("of 71");
        foot.ShouldContain(row => row.StartsWith("> ", StringComparison.Ordinal) && row.Contains("Spare", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(60, 18)]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void Every_column_can_be_walked_to_with_space_and_name_in_sight(int columns, int rows)
    {
        using var editor = OnExample("packing-shed", columns, rows);
        editor.Press(Key.T.WithShift);
        foreach (var column in PanelTui.Tables.CircuitColumns.All.AtLeastOne())
        {
            var header = editor.Screen.Split('\n').First(row => row.Contains("Space Breaker", StringComparison.Ordinal));
            header.ShouldContain("Name");
            header.ShouldContain(column.Title);
            editor.Press(Key.CursorRight);
        }
    }

    [Fact]
    public void A_cell_is_typed_into_and_enter_goes_down_a_row()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.T.WithShift, Key.CursorRight).Type("20").Press(Key.Enter).Screen.ShouldContain("Done: Set breaker of Shed lights to 20 A");
        editor.Press(Key.CursorDown, Key.CursorDown).Type("25").Press(Key.Enter);
        editor.Session.Now.Source.Text.ShouldBe(Shed.Text
            .Replace("breaker: 15 A\n    loads", "breaker: 20 A\n    loads", StringComparison.Ordinal)
            .Replace("name: Fan, breaker: 15 A", "name: Fan, breaker: 25 A", StringComparison.Ordinal));
        editor.Press(Key.U, Key.U).Session.Now.Source.Text.ShouldBe(Shed.Text);
    }

    [Fact]
    public void Tab_takes_a_cell_and_opens_the_next_one_in_the_row()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.T.WithShift, Key.CursorRight).Type("20").Press(Key.Tab, Key.Tab).Type("Lights of the shed").Press(Key.Enter);
        editor.Session.Schedule.Circuits[0].Breaker.Rating.Value.ShouldBe(20);
        editor.Session.Schedule.Circuits[0].Name.ShouldBe("Lights of the shed");
    }

    [Fact]
    public void A_cell_that_cannot_be_read_stays_with_the_sentence_and_giving_up_changes_nothing()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.T.WithShift, Key.CursorRight, Key.E).Type("20 V").Press(Key.Enter).Screen.ShouldContain("a voltage; a current in A or kA is expected");
        editor.Screen.ShouldContain("1 Breaker 20 V");
        editor.Press(Key.Esc).Session.Now.Source.Text.ShouldBe(Shed.Text);
        editor.Screen.ShouldContain("All breakers: 6");
    }

    [Fact]
    public void A_number_that_could_have_several_units_is_offered_in_a_cell_as_in_a_form()
    {
        using var editor = new OpenEditor();
        To(editor.Press(Key.T.WithShift), "Length").Type("60").Press(Key.Enter).Screen.ShouldContain("could be 60 ft: Enter takes it");
        editor.Press(Key.Enter).Session.Now.Source.Text.ShouldContain("    length: 60 ft\n");
    }

    [Fact]
    public void The_load_of_a_row_is_one_line_with_completion()
    {
        using var editor = new OpenEditor();
        To(editor.Press(Key.T.WithShift), "Load").Press(Key.E).Type("appl").Press(Key.Tab).Type(" 900 W, cont").Press(Key.Tab, Key.Enter);
        editor.Session.Now.Source.Text.ShouldContain("- {kind: appliance, rating: 900 W, continuous: yes}");
    }

    [Fact]
    public void While_a_value_is_typed_its_row_and_the_figures_show_what_it_would_do()
    {
        using var editor = new OpenEditor();
        To(editor.Press(Key.T.WithShift), "Load").Press(Key.E).Type("lighting 3 kW");
        editor.Screen.Split('\n').ShouldContain(row => row.StartsWith(">       1 15 A", StringComparison.Ordinal) && row.Contains("lighting 3 kW", StringComparison.Ordinal));
        editor.Screen.Split('\n')[2].ShouldContain("→");
        editor.Press(Key.Esc).Session.Now.Source.Text.ShouldBe(Shed.Text);
    }

    [Fact]
    public void What_follows_from_the_loads_cannot_be_typed_and_says_so()
    {
        using var editor = new OpenEditor();
        To(editor.Press(Key.T.WithShift), "VA").Press(Key.E).Screen.ShouldContain("VA follows from the other columns");
        To(editor, "Kind").Press(Key.End, Key.E).Screen.ShouldContain("Spare has no load yet: write it under Load");
    }

    [Fact]
    public void Enter_opens_all_fields_of_the_row_in_the_order_that_is_shown()
    {
        using var editor = new OpenEditor();
        To(editor.Press(Key.T.WithShift), "Name").Press(Key.S, Key.Home, Key.Enter).Screen.ShouldContain("Space 3: Bench receptacles");
        editor.Press(Key.CursorRight).Screen.ShouldContain("Space 11a: Fan");
        editor.Press(Key.Esc).Screen.ShouldContain("by name");
    }

    [Fact]
    public void One_value_for_all_marked_rows_is_one_step_of_undo()
    {
        using var editor = new OpenEditor();
        To(editor.Press(Key.T.WithShift), "Priority").Press(Key.Space, Key.Space, Key.CursorDown, Key.Space).Screen.ShouldContain("; 3 marked");
        editor.Press(Set).Screen.ShouldContain("Priority of 3");
        editor.Type("2").Press(Key.Enter).Screen.ShouldContain("Done: Set priority of 3 breakers to 2");
        editor.Session.Schedule.Circuits.Where(circuit => circuit.Priority == 2).Select(circuit => circuit.Name).ShouldBe(["Shed lights", "Well pump", "Fan"]);
        editor.Press(Key.U).Session.Now.Source.Text.ShouldBe(Shed.Text);
    }

    [Fact]
    public void A_value_that_one_of_the_marked_rows_cannot_have_changes_none_of_them()
    {
        using var editor = new OpenEditor();
        To(editor.Press(Key.T.WithShift, All), "Id").Press(Set).Type("same").Press(Key.Enter);
        editor.Screen.ShouldContain("! ");
        editor.Keys.ShouldContain("give up");
        editor.Press(Key.Esc).Session.Now.Source.Text.ShouldBe(Shed.Text);
    }

    [Fact]
    public void A_value_is_filled_down_from_the_row_above_with_one_key_held()
    {
        using var editor = new OpenEditor();
        To(editor.Press(Key.T.WithShift), "Wire").Type("12 Cu").Press(Key.Enter, Ditto, Ditto);
        editor.Session.Schedule.Circuits.Take(3).Select(circuit => $"{circuit.Wire}").Distinct().ShouldBe(["12 AWG Cu"]);
        editor.Press(Key.U, Key.U, Key.U).Session.Now.Source.Text.ShouldBe(Shed.Text);
    }

    [Fact]
    public void The_value_of_the_cell_is_given_to_all_marked_rows()
    {
        using var editor = new OpenEditor();
        To(editor.Press(Key.T.WithShift, All), "Breaker").Press(Key.G).Screen.ShouldContain("Done: Set breaker of 6 breakers to 15 A");
        editor.Session.Schedule.Circuits.AtLeastOne().ShouldAllBe(circuit => circuit.Breaker.Rating.Value == 15);
        editor.Press(None, Key.G).Screen.ShouldContain("No row is marked: Space marks one");
        editor.Press(Key.U).Session.Now.Source.Text.ShouldBe(Shed.Text);
    }

    [Fact]
    public void Marked_breakers_are_removed_with_their_ids_as_one_step_and_without_a_question()
    {
        using var editor = new OpenEditor(Shed.Text.Replace("running: all", "running: [pump, fan]", StringComparison.Ordinal));
        var before = editor.Session.Now.Source.Text;
        editor.Press(Key.T.WithShift, Key.CursorDown, Key.Space, Key.CursorDown, Key.Space, Key.Delete).Screen.ShouldContain("Done: Remove 2 breakers");
        editor.Session.Schedule.Circuits.Length.ShouldBe(4);
        editor.Session.Now.Source.Text.ShouldContain("running: []");
        editor.Press(Key.U).Session.Now.Source.Text.ShouldBe(before);
    }

    [Fact]
    public void Marked_breakers_are_taken_off_standby_and_put_back_as_one_step_each()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.T.WithShift, Key.Space, Key.Space, Key.O).Screen.ShouldContain("Done: Take 2 breakers off standby");
        editor.Session.Schedule.Circuits.Count(circuit => !circuit.Standby).ShouldBe(2);
        editor.Press(Key.O).Screen.ShouldContain("Done: Put 2 breakers on standby");
        editor.Press(Key.U, Key.U).Session.Now.Source.Text.ShouldBe(Shed.Text);
    }

    [Fact]
    public void Rows_are_sorted_by_the_column_and_once_more_turned_around_without_touching_the_file()
    {
        using var editor = new OpenEditor();
        To(editor.Press(Key.T.WithShift), "Name").Press(Key.S);
        NamesIn(editor).ShouldBe(["Bench receptacles", "Fan", "Lamp", "Shed lights", "Spare", "Well pump"]);
        editor.Press(Key.S).Screen.ShouldContain("by name, last first");
        NamesIn(editor)[0].ShouldBe("Well pump");
        To(editor, "Priority").Press(Key.S);
        NamesIn(editor)[0].ShouldBe("Shed lights");
        editor.Session.IsSaved.ShouldBeTrue();
    }

    [Fact]
    public void A_row_does_not_jump_away_while_the_column_it_is_sorted_by_is_typed_into()
    {
        using var editor = new OpenEditor();
        To(editor.Press(Key.T.WithShift), "Breaker").Press(Key.S, Key.Home).Type("90").Press(Key.Enter);
        NamesIn(editor)[0].ShouldBe("Shed lights");
        editor.Press(Key.S, Key.S);
        NamesIn(editor)[0].ShouldBe("Fan");
    }

    [Fact]
    public void Typing_after_a_slash_narrows_the_rows_and_all_of_them_can_be_marked()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.T.WithShift, new Key('/')).Type("lighting").Screen.ShouldContain("All breakers: 2 of 6 with: lighting_");
        editor.Press(Key.Enter, All).Screen.ShouldContain("2 of 6 with: lighting; by space; 2 marked");
        editor.Press(Key.Esc).Screen.ShouldContain("All breakers: 6; by space; 2 marked");
        editor.Press(new Key('/')).Type("pump").Screen.ShouldContain("2 marked, 2 not shown");
        editor.Press(Key.Esc, Key.Esc).Screen.ShouldNotContain("All breakers");
    }

    [Fact]
    public void Marks_stay_with_their_breakers_when_others_go_and_come_back()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.T.WithShift, Key.End, Key.CursorUp, Key.Space, Key.Home).Press(None);
        editor.Press(Key.End, Key.CursorUp, Key.Space, Key.Esc).GoTo("1").Press(Key.D, Key.U);
        editor.Press(Key.T.WithShift, Key.CursorDown, Key.Space, Key.Enter, Key.Esc);
        editor.Screen.Split('\n').Single(row => row.Contains("* ", StringComparison.Ordinal)).ShouldContain("Well pump");
    }

    [Fact]
    public void A_click_goes_to_a_cell_and_a_click_on_it_opens_the_breaker()
    {
        using var editor = new OpenEditor();
        var row = Array.FindIndex(editor.Press(Key.T.WithShift).Screen.Split('\n'), line => line.Contains("Bench", StringComparison.Ordinal));
        editor.Click(12, row).Screen.ShouldContain("3 Bench receptacles · Breaker: 20 A");
        editor.Click(12, row).Screen.ShouldContain("Space 3: Bench receptacles");
    }

    [Fact]
    public void The_keys_of_the_table_stand_on_its_page_of_keys()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.T.WithShift, new Key('?'));
        var seen = editor.Screen + editor.Press(Key.PageDown).Screen;
        foreach (var command in new PanelTui.Pages.TablePage(editor.Session, null).Commands.AtLeastOne()) seen.ShouldContain(command.Title);
    }

    [Fact]
    public void Where_nothing_may_be_changed_every_edit_says_why()
    {
        using var editor = new OpenEditor();
        editor.Session.WhyNoEdit = "only to look";
        editor.Press(Key.T.WithShift, Key.O).Screen.ShouldContain("only to look");
        editor.Press(Key.Delete).Paste("5\t20 A\tYard").Screen.ShouldContain("only to look");
        editor.Press(Key.CursorRight).Type("30").Screen.ShouldContain("only to look");
        editor.Keys.ShouldNotContain("give up");
        editor.Press(Key.Esc).Session.Now.Source.Text.ShouldBe(Shed.Text);
    }

    internal static OpenEditor To(OpenEditor editor, string column)
    {
        editor.Press([.. Enumerable.Repeat(Key.CursorLeft, 25)]);
        return editor.Press([.. Enumerable.Repeat(Key.CursorRight, PanelTui.Tables.CircuitColumns.All.TakeWhile(one => one.Title != column).Count())]);
    }

    private static List<string> NamesIn(OpenEditor editor) =>
        [.. editor.Screen.Split('\n').Skip(4).Select(row => editor.Session.Schedule.Circuits.FirstOrDefault(circuit => row.Length > 19 && row[19..].StartsWith(circuit.Name, StringComparison.Ordinal))?.Name).OfType<string>()];

    private static OpenEditor OnExample(string name, int columns = 80, int rows = 24) => new(File.ReadAllText(Shed.Example(name)), columns, rows);
}
