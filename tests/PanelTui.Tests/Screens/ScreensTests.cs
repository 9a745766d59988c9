using Terminal.Gui.Input;

namespace PanelTui.Tests.Screens;

/// <summary>The screens as a person sees them, kept as text; read a changed one before accepting it.</summary>
public class ScreensTests
{
    [Fact]
    public void The_opening_screen_at_80_by_24()
    {
        using var editor = OnExample("packing-shed");
        Golden.ShouldMatch(editor.Screen, "opening-80x24");
    }

    [Fact]
    public void A_breaker_held_over_an_occupied_space_at_80_by_24()
    {
        using var editor = OnExample("packing-shed");
        Golden.ShouldMatch(editor.GoTo("8").Press(Key.Space, Key.CursorDown).Screen, "carried-80x24");
    }

    [Fact]
    public void A_field_with_a_bad_unit_at_80_by_24()
    {
        using var editor = OnExample("packing-shed");
        Golden.ShouldMatch(editor.GoTo("5").Press(Key.Enter, Key.Tab).Type("20 V").Press(Key.Enter).Screen, "bad-unit-80x24");
    }

    [Fact]
    public void A_panel_of_three_legs_at_120_by_40()
    {
        using var editor = OnExample("print-studio", 120, 40);
        Golden.ShouldMatch(editor.Screen, "three-legs-120x40");
    }

    [Fact]
    public void The_foot_of_a_panel_of_84_spaces_at_80_by_24()
    {
        using var editor = OnExample("market-hall");
        Golden.ShouldMatch(editor.Press(Key.End).Screen, "tall-80x24");
    }

    [Fact]
    public void A_narrow_window_has_the_figures_on_one_row_at_60_by_18()
    {
        using var editor = OnExample("packing-shed", 60, 18);
        Golden.ShouldMatch(editor.GoTo("8").Press(Key.Space, Key.CursorDown).Screen, "narrow-60x18");
    }

    [Fact]
    public void A_panel_with_errors_shows_the_worst_beside_it()
    {
        using var editor = new OpenEditor(Shed.Text.Replace("space: 3,", "space: 1,", StringComparison.Ordinal));
        Golden.ShouldMatch(editor.Screen, "errors-80x24");
    }

    [Fact]
    public void The_page_of_keys()
    {
        using var editor = OnExample("packing-shed");
        Golden.ShouldMatch(editor.Press(new Key('?')).Screen, "keys-80x24");
    }

    [Fact]
    public void The_readme_shows_the_screen_as_it_is()
    {
        using var editor = OnExample("packing-shed");
        var readme = File.ReadAllText(Path.Combine(SourceTree.Root, "README.md"));
        foreach (var row in editor.GoTo("8").Press(Key.Space, Key.CursorDown).Screen.Lines().Skip(1).AtLeastOne()) readme.ShouldContain(row);
    }

    private static OpenEditor OnExample(string name, int columns = 80, int rows = 24) =>
        new(File.ReadAllText(Shed.Example(name)), columns, rows);
}
