using PanelTui.Commands;
using Terminal.Gui.Input;

namespace PanelTui.Tests.Screens;

/// <summary>The pages that lie over the face: why, findings, keys.</summary>
public class PagesTests
{
    [Fact]
    public void One_key_opens_how_a_figure_came_about_and_an_arrow_turns_to_the_next()
    {
        using var editor = OnExample("packing-shed");
        Golden.ShouldMatch(editor.Press(Key.Y).Screen, "why-80x24");
        editor.Press(Key.CursorRight).Screen.ShouldContain("Why legs (2 of");
        editor.Press(Key.CursorLeft, Key.CursorLeft).Screen.ShouldContain("Why branch:1 (");
        editor.Press(Key.Esc).Screen.ShouldContain("Findings");
    }

    [Fact]
    public void A_circuit_that_made_a_figure_up_can_be_gone_to()
    {
        using var editor = OnExample("packing-shed");
        editor.Press(Key.Y, Key.CursorDown, Key.Enter);
        editor.Session.Cursor.ShouldBe(new Engine.Panels.SpaceNumber(2));
        editor.Screen.ShouldNotContain("Why connected");
    }

    [Fact]
    public void The_steps_of_every_figure_can_be_paged_through()
    {
        using var editor = OnExample("hillside-house");
        editor.Press(Key.Y);
        foreach (var _ in editor.Session.Assessment.Figures)
            editor.Press(Key.PageDown, Key.PageDown, Key.End, Key.PageUp, Key.Home, Key.CursorUp, Key.CursorRight);
        editor.Screen.ShouldContain("Comes to:");
    }

    [Fact]
    public void Every_finding_stands_on_a_page_with_its_mend_and_enter_goes_there()
    {
        using var editor = OnExample("packing-shed");
        Golden.ShouldMatch(editor.GoTo("8").Press(Key.F.WithShift).Screen, "findings-80x24");
        editor.Press(Key.Enter).Session.Cursor.ShouldBe(new Engine.Panels.SpaceNumber(1));
    }

    [Fact]
    public void An_accepted_finding_is_listed_apart_with_its_reason()
    {
        var text = File.ReadAllText(Shed.Example("packing-shed"))
            + "accepted:\n  - {rule: legs-uneven, because: the big fan runs for an hour a day}\n";
        using var editor = new OpenEditor(text);
        editor.Press(Key.F.WithShift, Key.End).Screen.ShouldContain("Accepted by the schedule");
        editor.Screen.ShouldContain("Accepted because: the big fan runs for an hour a day");
    }

    [Fact]
    public void A_change_can_be_undone_from_a_page_and_the_page_follows()
    {
        using var editor = OnExample("packing-shed");
        editor.GoTo("1").Press(Key.D, Key.Y).Screen.ShouldNotContain("Sorting line lights");
        editor.Press(Key.U).Screen.ShouldContain("Sorting line lights");
    }

    [Fact]
    public void A_page_opens_and_closes_over_a_window_that_shrinks()
    {
        using var editor = OnExample("packing-shed");
        editor.Press(Key.Y).Resize(30, 8).Resize(60, 18).Press(Key.End).Resize(200, 60).Press(Key.PageUp);
        editor.Screen.ShouldContain("Why connected");
    }

    [Fact]
    public void Help_tells_how_things_are_done_by_keys_that_there_are()
    {
        using var editor = OnExample("packing-shed");
        Golden.ShouldMatch(editor.Press(new Key('?'), Key.CursorRight).Screen, "how-to-80x24");
        var keys = CommandBook.All.Select(command => command.KeyName).ToHashSet();
        foreach (var named in PanelTui.Pages.Guide.Tasks.SelectMany(task => task.How.Split('`').Where((_, at) => at % 2 == 1)).Where(named => !named.StartsWith("paneltui", StringComparison.Ordinal)).AtLeastOne())
            keys.ShouldContain(named);
    }

    private static OpenEditor OnExample(string name) => new(File.ReadAllText(Shed.Example(name)));
}
