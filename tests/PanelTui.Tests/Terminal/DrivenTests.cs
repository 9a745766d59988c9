using Terminal.Gui.Input;

namespace PanelTui.Tests.Terminal;

public class DrivenTests
{
    [Fact]
    public void A_key_is_on_the_screen_when_the_step_returns()
    {
        using var program = new Driven(_ => new Notebook());
        program.Type("pump").Row(1).ShouldBe("pump");
    }

    [Fact]
    public void A_dialog_can_be_opened_seen_and_closed()
    {
        using var program = new Driven(_ => new Notebook());
        program.Press(Key.F2).Screen.ShouldContain("Sure?");
        program.Press(Key.Esc).Screen.ShouldNotContain("Sure?");
    }

    [Fact]
    public void A_click_lands_where_it_is_aimed()
    {
        using var program = new Driven(_ => new Notebook());
        program.Click(12, 5).Row(0).ShouldBe("12,5");
    }

    [Fact]
    public void Closing_the_window_ends_the_program()
    {
        using var program = new Driven(_ => new Notebook());
        program.Press(Key.Q.WithCtrl).HasEnded.ShouldBeTrue();
    }

    [Fact]
    public void A_fault_in_the_program_comes_out_of_the_step_that_caused_it()
    {
        using var program = new Driven(_ => new Notebook());
        Should.Throw<InvalidOperationException>(() => program.Press(Key.F9)).Message.ShouldBe("a fault");
    }

    [Fact]
    public void A_smaller_window_is_painted_anew()
    {
        using var program = new Driven(_ => new Notebook());
        program.Type("pump").Resize(40, 10).Row(9).ShouldBe("bottom");
    }

    [Fact]
    public void Time_passes_when_it_is_told_to()
    {
        using var program = new Driven(_ => new Notebook());
        program.Press(Key.F3).Row(0).ShouldBe("");
        program.Pass(TimeSpan.FromSeconds(5)).Row(0).ShouldBe("five seconds later");
    }

    [Fact]
    public void Work_in_the_background_comes_back_to_the_screen()
    {
        using var program = new Driven(_ => new Notebook());
        program.Press(Key.F4).Until(p => p.Row(0) == "found").Row(0).ShouldBe("found");
    }

    [Fact]
    public void What_a_terminal_sends_goes_through_the_key_filter()
    {
        using var program = new Driven(_ => new Notebook());
        program.Bytes("pu\e[999~\e]11;rgb:0/0/0\amp").Row(1).ShouldBe("pump");
    }

    [Fact]
    public void Letting_go_after_a_drag_lands_where_the_hand_is()
    {
        using var program = new Driven(_ => new Notebook());
        program.Drag(3, 4, 20, 8).Row(0).ShouldBe("20,8");
    }

    [Fact]
    public void Copying_reaches_the_users_own_clipboard()
    {
        using var program = new Driven(_ => new Notebook());
        program.Press(Key.F7).Copied.ShouldBe(["copied"]);
    }

    [Fact]
    public void A_key_costs_one_short_write()
    {
        using var program = new Driven(_ => new Notebook());
        program.Press(Key.X).Cost.Writes.ShouldBe(1);
        program.Press(Key.X).Cost.ShouldBe((1, 1));
    }

    [Fact]
    public void A_step_that_changes_nothing_sends_nothing()
    {
        using var program = new Driven(_ => new Notebook());
        program.Press(Key.F12).Cost.ShouldBe((0, 0));
    }

    [Fact]
    public void A_terminal_someone_wrote_on_is_painted_anew()
    {
        using var program = new Driven(_ => new Notebook());
        program.Type("pump").Press(Key.L.WithCtrl).Cost.Bytes.ShouldBeGreaterThan(12);
    }

    [Fact]
    public void A_plain_terminal_is_painted_in_plain_letters()
    {
        using var program = new Driven(_ => new Notebook(), ascii: true);
        program.Type("Küche").Press(Key.F2).Painted.AtLeastOne().ShouldAllBe(letter => letter < '\u0080');
        program.Painted.ShouldContain("Kuche");
    }

    [Fact]
    public void Text_of_a_file_never_reaches_the_terminal_raw()
    {
        using var program = new Driven(_ => new Notebook());
        program.Type("\u202epump\u009b").Row(1).ShouldBe("⟨U+202E⟩pump⟨U+009B⟩");
    }

    [Fact]
    public void A_hundred_programs_at_once_do_not_disturb_each_other() =>
        Parallel.For(0, 100, number =>
        {
            using var program = new Driven(_ => new Notebook(), 40, 10);
            program.Type($"panel {number}").Row(1).ShouldBe($"panel {number}");
        });
}
