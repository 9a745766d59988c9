using Terminal.Gui.Input;

namespace PanelTui.Tests.Terminal;

public class PastedTextTests
{
    [Fact]
    public void A_paste_arrives_in_one_piece() =>
        new Keyboard().Send("\e[200~one\ntwo\tthree\e[201~").Pasted.ShouldBe(["one\ntwo\tthree"]);

    [Fact]
    public void A_paste_cut_anywhere_arrives_in_one_piece()
    {
        const string sent = "\e[200~sump pump\e[201~";
        for (var cut = 1; cut < sent.Length; cut++)
            new Keyboard().Send(sent[..cut]).Send(sent[cut..]).Pasted.ShouldBe(["sump pump"], $"cut after {cut}");
    }

    [Fact]
    public void A_mark_of_the_end_inside_the_paste_does_not_start_commands()
    {
        var keyboard = new Keyboard().Send("\e[200~one\e[201~\u0011two\r\e[201~");
        keyboard.Pasted.ShouldBe(["onetwo\r"]);
        keyboard.Keys.ShouldBeEmpty();
    }

    [Fact]
    public void Two_pastes_stay_two() =>
        new Keyboard().Send("\e[200~one\e[201~\e[200~two\e[201~").Pasted.ShouldBe(["one", "two"]);

    [Fact]
    public void What_is_typed_after_a_paste_is_typed() =>
        new Keyboard().Send("\e[200~one\e[201~x").Keys.ShouldBe([Key.X]);

    [Fact]
    public void Control_characters_are_left_out_of_a_paste() =>
        new Keyboard().Send("\e[200~a\e]52;c;eA==\ab\u009bc\u0000d\e[201~").Pasted.ShouldBe(["a]52;c;eA==bcd"]);

    [Fact]
    public void A_paste_that_stops_in_the_middle_is_kept() =>
        new Keyboard().Send("\e[200~half a pa").Wait().Pasted.ShouldBe(["half a pa"]);

    [Fact]
    public void A_paste_of_a_million_letters_is_taken() =>
        new Keyboard().Send($"\e[200~{new string('x', 1_000_000)}\e[201~").Pasted.Single().Length.ShouldBe(1_000_000);
}
