using PanelTui.Sheets;
using PanelTui.Tests.CommandLine;
using PanelTui.Tests.Screens;
using Terminal.Gui.Input;

namespace PanelTui.Tests.Tasks;

/// <summary>Task 11: the sheets for the door and the permit folder, by one command and from the editor.</summary>
public class WriteTheSheetsTests
{
    [Theory]
    [InlineData("directory")]
    [InlineData("labels")]
    [InlineData("loads")]
    [InlineData("diagram")]
    [InlineData("parts")]
    public void Each_sheet_is_one_command(string sheet)
    {
        using var folder = new TempFolder();
        var file = folder.File($"{sheet}.pdf");
        Ran.Of("print", sheet, Shed.Example("packing-shed"), "-o", file).Code.ShouldBe(0);
        File.ReadAllBytes(file)[..5].ShouldBe("%PDF-"u8.ToArray());
    }

    [Theory]
    [MemberData(nameof(TaskSizes.Both), MemberType = typeof(TaskSizes))]
    public void Each_is_looked_at_and_written_from_the_editor_in_three_keys(int columns, int rows)
    {
        using var editor = new OpenEditor(File.ReadAllText(Shed.Example("packing-shed")), columns, rows);
        editor.Press(Key.P.WithShift, Key.W, Key.Enter).Session.Message.ShouldStartWith("Wrote ");
        editor.Presses.ShouldBe(3);
        foreach (var kind in SheetKind.All.AtLeastOne())
        {
            editor.Screen.ShouldContain($", {kind.Name}: ");
            editor.Press(Key.CursorRight);
        }
    }
}
