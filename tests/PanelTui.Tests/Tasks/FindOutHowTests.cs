using PanelTui.Commands;
using PanelTui.Tests.Screens;
using Terminal.Gui.Input;

namespace PanelTui.Tests.Tasks;

/// <summary>Task 14: find out how to do any of this without leaving the program.</summary>
public class FindOutHowTests
{
    [Theory]
    [MemberData(nameof(TaskSizes.Both), MemberType = typeof(TaskSizes))]
    public void The_key_of_the_list_of_commands_and_of_help_stand_on_the_screen(int columns, int rows)
    {
        using var editor = new OpenEditor(columns: columns, rows: rows);
        editor.Keys.ShouldContain(": commands");
        editor.Keys.ShouldContain("? keys");
        editor.Keys.ShouldContain("q quit");
    }

    [Theory]
    [MemberData(nameof(TaskSizes.Both), MemberType = typeof(TaskSizes))]
    public void Every_command_of_the_face_stands_on_the_page_of_keys(int columns, int rows)
    {
        using var editor = new OpenEditor(columns: columns, rows: rows);
        editor.Press(new Key('?'));
        var seen = editor.Screen;
        for (var page = 0; page < 4; page++) seen += editor.Press(Key.PageDown).Screen;
        foreach (var command in CommandBook.All.Where(command => command.Modes.HasFlag(EditorMode.Face)).AtLeastOne())
            seen.ShouldContain(command.Title[..Math.Min(25, command.Title.Length)]);
    }

    [Theory]
    [InlineData("undo", "u      Undo")]
    [InlineData("fewest moves", "b      ")]
    [InlineData("door directory", "P      ")]
    [InlineData("^S", "^S     Save")]
    public void A_command_is_found_by_its_name_by_its_use_and_by_its_key(string typed, string found)
    {
        using var editor = new OpenEditor();
        editor.Press(new Key(':')).Type(typed).Screen.ShouldContain(found);
        editor.Screen.ShouldNotContain("No command has");
    }

    [Theory]
    [MemberData(nameof(TaskSizes.Both), MemberType = typeof(TaskSizes))]
    public void What_is_found_runs_with_enter_and_what_cannot_run_says_why(int columns, int rows)
    {
        using var editor = new OpenEditor(columns: columns, rows: rows);
        editor.Press(new Key(':')).Type("List all findings").Press(Key.Enter).Screen.ShouldContain("Findings:");
        editor.Press(Key.Esc, new Key(':')).Type("redo").Screen.ShouldContain("Nothing has been undone");
    }
}
