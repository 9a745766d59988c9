using PanelTui.Commands;
using Terminal.Gui.Input;

namespace PanelTui.Tests.Screens;

/// <summary>Text of a file never drives the terminal from any page: each command of the face is run on a hostile schedule and paged through.</summary>
/// <remarks>Each step also checks that the bytes sent paint exactly what was drawn.</remarks>
public class HostileScreensTests
{
    public static TheoryData<string> Commands => [.. CommandBook.All
        .Where(command => command.Modes.HasFlag(EditorMode.Face) && command is not (QuitCommand or SaveCommand) && command.KeyName != "Enter" && !CursorCommand.All.Contains(command))
        .Select(command => command.KeyName).Distinct()];

    [Theory, MemberData(nameof(Commands))]
    public void No_page_lets_it_through(string name)
    {
        using var editor = new OpenEditor(HostileText.Schedule);
        var key = CommandBook.All.First(command => command.KeyName == name).Keys[0];
        foreach (var walk in (Key[])[key, Key.CursorDown, Key.Enter, Key.PageDown, Key.Esc, key, Key.CursorRight, Key.End, Key.CursorRight, Key.Enter, Key.Esc, Key.Esc, Key.Esc])
        {
            editor.Press(walk);
            HostileText.ShouldDriveNothing(editor.Screen, $"{name}, {walk}");
        }
    }

    [Theory]
    [InlineData("p")]
    [InlineData("c")]
    [InlineData("f")]
    [InlineData("t")]
    [InlineData("s")]
    [InlineData("b")]
    [InlineData("n")]
    [InlineData("v")]
    public void No_form_lets_it_through(string section)
    {
        using var editor = new OpenEditor(HostileText.Schedule, 120, 40);
        editor.Press(Key.A, new Key(section[0]));
        for (var row = 0; row < 30; row++)
        {
            HostileText.ShouldDriveNothing(editor.Press(Key.Enter).Screen, section);
            HostileText.ShouldDriveNothing(editor.Press(Key.Esc, Key.CursorDown).Screen, section);
        }
    }

    [Fact]
    public void What_is_copied_to_the_clipboard_is_clean_too()
    {
        using var editor = new OpenEditor(HostileText.Schedule);
        editor.GoTo("1").Press(Key.C.WithShift).Copied.ShouldHaveSingleItem();
        HostileText.ShouldDriveNothing(editor.Copied[0], "clipboard");
    }

    [Fact]
    public void Rows_of_the_table_are_copied_clean_too()
    {
        using var editor = new OpenEditor(HostileText.Schedule);
        editor.Press(Key.T.WithShift, new Key('+'), Key.C.WithShift).Copied.ShouldHaveSingleItem();
        HostileText.ShouldDriveNothing(editor.Copied[0].Replace('\t', ' '), "clipboard");
    }

    [Fact]
    public void What_is_pasted_and_cannot_go_in_drives_nothing_where_it_is_shown()
    {
        using var editor = new OpenEditor(Shed.Text, 120, 40);
        editor.Press(Key.T.WithShift).Paste($"5\t{HostileText.InAName}\t{HostileText.InAName}\n6\t15 A\t{HostileText.InAName}\n");
        editor.Screen.ShouldContain("Pasted: 2 rows, 1 cannot go in yet");
        foreach (var key in (Key[])[Key.CursorRight, Key.Enter, Key.Esc, Key.CursorRight, Key.Enter, Key.Esc, Key.T, Key.Delete, Key.T])
            HostileText.ShouldDriveNothing(editor.Press(key).Screen, $"{key}");
        editor.Screen.ShouldContain("Done: Paste one breaker");
    }
}
