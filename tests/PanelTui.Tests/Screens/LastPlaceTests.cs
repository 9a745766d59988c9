using PanelTui.Documents.Recovery;
using Terminal.Gui.Input;

namespace PanelTui.Tests.Screens;

/// <summary>A schedule opens where it was left.</summary>
public class LastPlaceTests
{
    [Theory]
    [InlineData("11b", "11b")]
    [InlineData("5", "5")]
    [InlineData("99", "1")]
    [InlineData("x", "1")]
    [InlineData("", "1")]
    public void The_cursor_stands_where_it_was_left_if_there_is_such_a_place(string kept, string stands)
    {
        using var desk = new DeskEditor((desk, path) => new LastPlace(desk.State).Keep(path, kept));
        $"{desk.Editor.Session.Cursor}".ShouldBe(stands);
    }

    [Fact]
    public void Leaving_keeps_the_place_and_the_next_start_finds_it()
    {
        using var desk = new DeskEditor();
        desk.Editor.GoTo("11a").Press(Key.Q);
        desk.End();
        new LastPlace(desk.State).Of(desk.Editor.File).ShouldBe("11a");
    }

    [Fact]
    public void A_folder_that_cannot_be_written_is_no_fault()
    {
        using var folder = new TempFolder();
        var place = new LastPlace(new Documents.Files.StateFolder(folder.File("file", "no folder")));
        place.Keep(folder.File("a.yaml", Shed.Text), "3");
        place.Of(folder.File("a.yaml")).ShouldBeNull();
    }
}
