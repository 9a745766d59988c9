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
}
