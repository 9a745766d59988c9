using PanelTui.Documents.Tests;
using Terminal.Gui.Input;

namespace PanelTui.Tests.Screens;

/// <summary>Rows of a spreadsheet in and out of the table of breakers: all of them or none, and nothing pasted is lost.</summary>
public class TablePasteTests
{
    [Fact]
    public void Three_rows_of_four_cells_fill_twelve_cells_from_the_cursor_as_one_step_of_undo()
    {
        using var editor = new OpenEditor();
        TablePageTests.To(editor.Press(Key.T.WithShift), "Protection").Paste("gfci\t14 AWG Cu\t40 ft\tno\nafci\t12 AWG Cu\t15 m\tno\ndual-function\t12 AWG Cu\t9'\tno\n");
        editor.Screen.ShouldContain("Done: Paste onto 3 breakers");
        editor.Session.Now.Source.Text.ShouldContain("protection: dual-function, wire: 12 AWG Cu, length: 9 ft, spare: no");
        editor.Session.Schedule.Circuits.Take(3).AtLeastOne().ShouldAllBe(circuit => circuit.Wire != null && circuit.Length != null);
        editor.Press(Key.U).Session.Now.Source.Text.ShouldBe(Shed.Text);
    }

    [Fact]
    public void Rows_with_a_space_are_the_breaker_there_or_a_new_one()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.T.WithShift).Paste("Space\tBreaker\tName\tPoles\tLoad\n1\t20\tLights\t\t\n5\t15A\tYard light\t\tlighting 90 W\n6\t30 A\tHeater\t2\twater-heater 4.5 kW\n");
        editor.Screen.ShouldContain("Done: Paste 2 new and onto 1 that was there");
        var circuits = editor.Session.Schedule.Circuits;
        circuits.Select(circuit => $"{circuit.Space} {circuit.Name}").ShouldBe(["1 Lights", "2 Well pump", "3 Bench receptacles", "5 Yard light", "6 Heater", "11a Fan", "11b Lamp", "12 Spare"]);
        circuits[0].Loads.Length.ShouldBe(1);
        circuits[4].Breaker.Poles.ShouldBe(2);
        editor.Press(Key.U).Session.Now.Source.Text.ShouldBe(Shed.Text);
    }

    [Fact]
    public void What_cannot_be_read_is_told_by_row_and_column_and_nothing_is_half_applied()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.T.WithShift).Paste("5\t15A\tYard light\n6\tlots\tYard pump\n7\t\tPorch\n");
        Golden.ShouldMatch(editor.Screen, "pasted-80x24");
        editor.Session.Now.Source.Text.ShouldBe(Shed.Text);
        editor.Press(Key.T).Screen.ShouldContain("row 2 (space 6), Breaker: breaker is \"lots\", not a current");
        editor.Press(Key.Esc).Session.Now.Source.Text.ShouldBe(Shed.Text);
    }

    [Fact]
    public void Pasted_cells_are_mended_in_their_places_and_then_all_go_in_together()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.T.WithShift).Paste("5\t15A\tYard light\n6\tlots\tYard pump\n7\t\tPorch\n8\t20 A\n").Press(Key.CursorDown, Key.CursorRight, Key.Enter).Type("20 V");
        editor.Press(Key.Enter).Screen.ShouldContain("! breaker is \"20 V\"");
        editor.Press(Key.Backspace).Type("A").Press(Key.Enter, Key.CursorDown, Key.Enter).Type("15A").Press(Key.Enter, Key.CursorDown, Key.Delete);
        editor.Screen.ShouldContain("Pasted: 3 rows, all can go in: t takes them");
        editor.Press(Key.T).Screen.ShouldContain("Done: Paste 3 breakers");
        editor.Session.Schedule.Circuits.Length.ShouldBe(9);
        editor.Press(Key.U).Session.Now.Source.Text.ShouldBe(Shed.Text);
    }

    [Fact]
    public void An_id_that_another_breaker_has_is_the_cell_that_is_told()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.T.WithShift).Paste("id\tspace\tbreaker\nyard\t5\t15A\npump\t6\t15A\n").Screen.ShouldContain("row 2 (space 6), Id:");
        editor.Session.Now.Source.Text.ShouldBe(Shed.Text);
    }

    [Fact]
    public void A_row_beyond_the_last_space_goes_in_with_its_finding_in_sight_as_in_a_file()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.T.WithShift).Paste("40\t15A\tYard pump\n").Screen.ShouldContain("1 E");
        editor.Press(Key.U).Session.Now.Source.Text.ShouldBe(Shed.Text);
    }

    [Fact]
    public void A_load_that_cannot_be_read_is_the_cell_that_is_told()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.T.WithShift).Paste("space\tbreaker\tload\n5\t15A\tlighting 90 V\n").Screen.ShouldContain("row 1 (space 5), Load: rating is \"90 V\", a voltage");
    }

    [Fact]
    public void Rows_without_a_space_go_no_further_than_the_rows_that_there_are()
    {
        using var editor = new OpenEditor();
        TablePageTests.To(editor.Press(Key.T.WithShift), "Name").Press(Key.End).Paste("One\nTwo\n").Screen.ShouldContain("row 2: there is no breaker on this row");
        editor.Press(Key.Esc).Session.Now.Source.Text.ShouldBe(Shed.Text);
    }

    [Fact]
    public void Figures_that_follow_from_others_are_passed_over_and_cells_of_no_column_are_told()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.T.WithShift).Paste("Space\tName\tVA\n1\tLights\t480\n").Session.Schedule.Circuits[0].Name.ShouldBe("Lights");
        editor.Paste("Space\tName\tColour\n1\tLamps\tred\n").Screen.ShouldContain("row 1 (space 1), column 3: no column of the table is meant by \"red\"");
    }

    [Fact]
    public void Quoted_cells_line_ends_of_other_systems_and_blank_lines_are_read()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.T.WithShift).Paste("\r\n5\t15A\t\"Yard \"\"east\"\"\tlight\"\r\n\r\n6\t15A\t\"Porch\" lamp\r\n").Session.Schedule.Circuits.Where(circuit => circuit.Space.Number is 5 or 6)
            .Select(circuit => circuit.Name).ShouldBe(["Yard \"east\" light", "\"Porch\" lamp"]);
    }

    [Fact]
    public void Marked_rows_are_copied_with_their_keys_and_pasted_into_another_schedule_they_are_the_same()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.T.WithShift, new Key('+'), Key.C.WithShift).Copied.ShouldHaveSingleItem();
        editor.Copied[0].Split('\n')[..2].ShouldBe(["space\tbreaker\tname\tpoles\tloads\tspare\tid", "1\t15 A\tShed lights\t\tlighting 480 W\t\tlights"]);
        var circuits = editor.Session.Schedule.Circuits;
        editor.Press(Key.Delete).Session.Schedule.Circuits.ShouldBeEmpty();
        editor.Paste(editor.Copied[0]).Screen.ShouldContain("Done: Paste 6 breakers");
        editor.Session.Schedule.Circuits.Select(Told).ShouldBe(circuits.Select(Told));
    }

    [Fact]
    public void A_name_is_copied_as_no_formula_and_comes_back_as_it_was()
    {
        using var editor = new OpenEditor(Shed.Text.Replace("name: Fan", "name: \"=1+1\"", StringComparison.Ordinal));
        editor.Press(Key.T.WithShift, new Key('/')).Type("=1").Press(Key.Enter, Key.C.WithShift).Copied[0].ShouldContain("\t'=1+1\t");
        editor.Press(Key.Delete).Paste(editor.Copied[0]).Session.Schedule.Circuits[3].Name.ShouldBe("=1+1");
    }

    [Fact]
    public void More_rows_than_any_panel_has_are_refused_at_once()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.T.WithShift).Paste(string.Concat(Enumerable.Repeat("5\t15 A\n", 2_000))).Screen.ShouldContain("2000 rows were pasted: no panel has as many breakers");
    }

    /// <summary>Random pastes, bulk edits and undos: what was refused changed nothing, and undo gives the file back to the byte.</summary>
    [Theory]
    [InlineData("packing-shed", 1)]
    [InlineData("lake-cabin", 2)]
    [InlineData("print-studio", 3)]
    [InlineData("hillside-house", 4)]
    public void Whatever_is_pasted_or_set_for_many_undo_gives_the_file_back(string example, int seed)
    {
        var text = File.ReadAllText(Shed.Example(example));
        var dice = new Dice(seed);
        using var editor = new OpenEditor(text);
        editor.Press(Key.T.WithShift);
        for (var step = 0; step < 40; step++)
        {
            var before = editor.Session.Now.Source.Text;
            editor.Press([.. Enumerable.Repeat(dice.Any([Key.CursorRight, Key.CursorLeft, Key.CursorDown, Key.CursorUp]), dice.Next(1, 6))]);
            if (!TableDice.Do(editor, dice) || editor.Session.Now.Source.Text is var after && after == before) continue;
            editor.Session.Undo();
            editor.Session.Now.Source.Text.ShouldBe(before, $"one step of undo takes back {editor.Session.RedoTitle}");
            editor.Session.Redo();
            editor.Session.Now.Source.Text.ShouldBe(after);
        }

        while (editor.Session.UndoTitle is not null) editor.Session.Undo();
        editor.Session.Now.Source.Text.ShouldBe(text);
    }

    /// <summary>All but the id, which a breaker gets by its name where it has none.</summary>
    private static string Told(Engine.Panels.Circuit circuit) =>
        $"{circuit.Space} {circuit.Name} {circuit.Breaker} {circuit.IsSpare} {string.Join(';', circuit.Loads)}";
}
