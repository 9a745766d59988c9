using Terminal.Gui.Input;

namespace PanelTui.Tests.Screens;

/// <summary>Asking for a better balance in the editor.</summary>
public class BalancePageTests
{
    [Fact]
    public void One_key_lists_the_best_balance_for_each_number_of_moves()
    {
        using var editor = Opened();
        editor.Press(Key.B).Until("that is proven").Screen.ShouldContain("Balance of the connected load");
        editor.Screen.ShouldContain("2     0.23 %   A   5226 VA  B   5250 VA   best, proven");
    }

    [Fact]
    public void A_plan_is_taken_as_one_step_of_undo_and_the_file_gets_every_byte_back()
    {
        using var editor = Opened();
        var before = editor.Session.Now.Source.Text;
        editor.Press(Key.B).Until("that is proven").Press(Key.End, Key.Enter).Screen.ShouldContain("[x] 1. two breakers change places with their wires");
        editor.Press(Key.T).Screen.ShouldContain("Balance with 2 moves, 8.36 % to 0.23 %");
        editor.Session.Now.Source.Text.ShouldNotBe(before);
        editor.Press(Key.U).Session.Now.Source.Text.ShouldBe(before);
    }

    [Fact]
    public void The_face_shows_where_the_breakers_of_a_plan_would_land()
    {
        using var editor = Opened();
        editor.Press(Key.B).Until("that is proven").Press(Key.End, Key.Enter, Key.PageDown).Screen.ShouldContain("» Scales");
    }

    [Fact]
    public void A_step_that_is_left_out_is_not_taken_and_with_none_left_nothing_can_be()
    {
        using var editor = Opened();
        editor.Press(Key.B).Until("that is proven").Press(Key.End, Key.Enter, Key.Enter).Screen.ShouldContain("[ ] 1.");
        editor.Press(Key.T).Screen.ShouldContain("No move is marked");
        editor.Session.IsSaved.ShouldBeTrue();
    }

    [Fact]
    public void An_arrow_turns_to_another_figure_to_balance()
    {
        using var editor = Opened();
        editor.Press(Key.B, Key.CursorRight, Key.CursorRight).Screen.ShouldContain("Balance of the running watts of the most uneven scenario");
    }

    private static OpenEditor Opened() => new(File.ReadAllText(Shed.Example("packing-shed")));
}
