using PanelTui.Terminal;
using Terminal.Gui.App;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace PanelTui.Tests.Terminal;

/// <summary>What this program knows of the inside of Terminal.Gui: an upgrade that moves it fails here, by name.</summary>
public class LibraryGuardTests
{
    [Fact]
    public void The_library_is_the_version_its_insides_were_read_in() =>
        typeof(IApplication).Assembly.GetName().Version.ShouldBe(new Version(2, 5, 0, 0));

    [Fact]
    public void A_view_tells_which_part_of_it_asks_to_be_painted()
    {
        using var view = new View { Width = 10, Height = 4 };
        view.Layout();
        view.SetNeedsDraw(new System.Drawing.Rectangle(0, 2, 10, 1));
        Internals.NeedsDrawRect(view).ShouldBe(new System.Drawing.Rectangle(0, 0, 10, 4));
    }

    [Fact]
    public void An_old_console_is_asked_nothing()
    {
        using var program = new Driven(_ => new Notebook());
        program.App.Driver!.IsLegacyConsole.ShouldBeTrue();
        program.App.Driver.KittyKeyboardCapabilities.ShouldBeNull();
        var parser = program.App.Driver.GetInputProcessor().GetParser();
        foreach (var terminator in (string[])["c", "R", "u", "t", "n", "y", "\a", "\e\\"])
            parser.IsExpecting(terminator, null).ShouldBeFalse(terminator);
    }

    [Fact]
    public void The_loop_takes_a_turn_for_each_pass_of_ours()
    {
        using var program = new Driven(_ => new Notebook());
        var turns = 0;
        program.App.Iteration += (_, _) => turns++;
        program.Press(Key.X);
        turns.ShouldBeInRange(1, 5);
    }

    [Fact]
    public void Escape_ends_nothing_by_itself()
    {
        using var program = new Driven(_ => new Notebook());
        program.Press(Key.Esc).HasEnded.ShouldBeFalse();
    }
}
