using PanelTui.Commands;
using PanelTui.Presentation;
using Terminal.Gui.Input;

namespace PanelTui.Tests.Screens;

/// <summary>Windows of every size, changed at any time, also while a page, a form or a breaker is in the way.</summary>
public class SizesTests
{
    private static readonly (int Columns, int Rows)[] Sizes =
        [(60, 18), (1, 1), (80, 24), (39, 40), (40, 10), (200, 9), (120, 40), (200, 60), (10, 3), (61, 19), (400, 150), (76, 24)];

    [Theory]
    [InlineData("packing-shed")]
    [InlineData("market-hall")]
    public void Every_size_shows_the_panel_or_a_sentence(string example)
    {
        using var editor = new OpenEditor(File.ReadAllText(Shed.Example(example)));
        foreach (var (columns, rows) in Sizes)
        {
            editor.Resize(columns, rows);
            ShouldFit(editor, columns, rows);
            if (columns >= 60 && rows >= 18) editor.Screen.ShouldMatch("%");
        }
    }

    public static TheoryData<string> Commands => [.. CommandBook.All
        .Where(command => command.Modes.HasFlag(EditorMode.Face) && command is not QuitCommand && !CursorCommand.All.Contains(command))
        .Select(command => command.KeyName).Distinct()];

    [Theory, MemberData(nameof(Commands))]
    public void Whatever_is_open_survives_every_size_and_nothing_is_lost(string name)
    {
        var text = File.ReadAllText(Shed.Example("packing-shed"));
        using var editor = new OpenEditor(text);
        editor.Press(CommandBook.All.First(command => command.KeyName == name).Keys[0]);
        foreach (var (columns, rows) in Sizes)
        {
            editor.Resize(columns, rows).Press(Key.CursorDown);
            ShouldFit(editor, columns, rows);
        }

        editor.Resize(80, 24).Press(Key.Esc, Key.Esc, Key.Esc, Key.Esc);
        while (editor.Session.UndoTitle is not null) editor.Press(Key.U);
        editor.Session.Now.Source.Text.ShouldBe(text);
    }

    [Fact]
    public void A_screen_that_something_else_wrote_on_is_painted_anew_by_one_key()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.L.WithCtrl).Cost.Bytes.ShouldBeGreaterThan(1000);
    }

    [Fact]
    public void A_long_name_is_in_full_below_at_60_by_18()
    {
        const string Name = "Receptacles along the whole north wall of the packing hall";
        using var editor = new OpenEditor(Shed.Text.Replace("Shed lights  ", $"{Name}  ", StringComparison.Ordinal), 60, 18);
        string.Join(' ', editor.Screen.Split('\n').Select(line => line.Trim())).ShouldContain(Name);
    }

    private static void ShouldFit(OpenEditor editor, int columns, int rows)
    {
        var lines = editor.Screen.Split('\n');
        lines.Length.ShouldBeLessThanOrEqualTo(rows);
        lines.AtLeastOne().ShouldAllBe(line => DisplayText.Width(line) <= columns);
        if (columns < 40 || rows < 10) editor.Screen.ShouldStartWith(columns < 5 ? "…" : "The w");
    }
}
