using PanelTui.Sheets;
using Terminal.Gui.Input;

namespace PanelTui.Tests.Screens;

/// <summary>The printed sheets as pages over the face.</summary>
public class SheetPageTests
{
    [Fact]
    public void One_key_shows_the_door_directory_and_an_arrow_turns_to_the_labels()
    {
        using var editor = new OpenEditor(File.ReadAllText(Shed.Example("packing-shed")));
        editor.Press(Key.P.WithShift).Screen.ShouldContain("Circuit directory: Packing shed standby");
        editor.Screen.ShouldContain("Packing bench");
        editor.Press(Key.CursorRight).Screen.ShouldContain("Sheet 2 of 7, labels");
        editor.Press(Key.CursorLeft, Key.CursorLeft).Screen.ShouldContain("Sheet 7 of 7, plots");
        editor.Press(Key.Esc).Screen.ShouldNotContain("Sheet ");
    }

    [Fact]
    public void Every_sheet_can_be_paged_through()
    {
        using var editor = new OpenEditor(File.ReadAllText(Shed.Example("hillside-house")));
        editor.Press(Key.P.WithShift);
        foreach (var kind in SheetKind.All.AtLeastOne())
        {
            editor.Screen.ShouldContain($", {kind.Name}: ");
            editor.Press(Key.End).Screen.ShouldContain("work de-energised");
            editor.Press(Key.CursorRight);
        }
    }

    [Fact]
    public void A_sheet_is_written_from_the_editor_and_over_no_file()
    {
        using var editor = new OpenEditor(File.ReadAllText(Shed.Example("packing-shed")));
        var file = Path.Combine(Path.GetDirectoryName(editor.File)!, "directory.pdf");
        editor.Press(Key.P.WithShift, Key.W, Key.Enter).Session.Message.ShouldBe($"Wrote {file}");
        File.ReadAllBytes(file)[..5].ShouldBe("%PDF-"u8.ToArray());
        editor.Press(Key.W, Key.Enter).Screen.ShouldContain("exists already");
        editor.Press(Key.End).Type("x").Press(Key.Enter).Screen.ShouldContain("ends in no");
    }
}
