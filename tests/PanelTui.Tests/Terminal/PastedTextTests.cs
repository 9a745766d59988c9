using System.Text.RegularExpressions;
using CsCheck;
using PanelTui.Terminal;
using Terminal.Gui.Input;

namespace PanelTui.Tests.Terminal;

public partial class PastedTextTests
{
    [Fact]
    public void A_paste_arrives_in_one_piece() =>
        new Keyboard().Send("\e[200~one\ntwo\tthree\e[201~").Wait().Pasted.ShouldBe(["one\ntwo\tthree"]);

    [Fact]
    public void A_paste_cut_anywhere_arrives_in_one_piece()
    {
        const string sent = "\e[200~sump pump\e[201~";
        for (var cut = 1; cut < sent.Length; cut++)
            new Keyboard().Send(sent[..cut]).Send(sent[cut..]).Wait().Pasted.ShouldBe(["sump pump"], $"cut after {cut}");
    }

    [Fact]
    public void A_mark_of_the_end_inside_the_paste_does_not_start_commands()
    {
        var keyboard = new Keyboard().Send("\e[200~one\e[201~\u0011two\r\e[201~").Wait();
        keyboard.Pasted.ShouldBe(["onetwo\r"]);
        keyboard.Keys.ShouldBeEmpty();
    }

    [Theory]
    [InlineData(4096)]
    [InlineData(4095)]
    [InlineData(9)]
    [InlineData(1)]
    public void Thousands_of_end_marks_do_not_start_a_command_however_the_line_cuts_them(int size)
    {
        var keyboard = new Keyboard().Send("\e[200~");
        foreach (var part in Enumerable.Repeat("\e[201~ \"qd \"", 3000).SelectMany(text => text).Chunk(size)) keyboard.Send(new string(part));
        keyboard.Send("\e[201~").Wait();
        keyboard.Keys.ShouldBeEmpty();
        keyboard.Pasted.ShouldHaveSingleItem().ShouldBe(string.Concat(Enumerable.Repeat(" \"qd \"", 3000)));
    }

    /// <summary>Any text, with marks and pieces of marks in it, cut anywhere: nothing of it is a key.</summary>
    [Fact]
    public void A_paste_of_anything_cut_anywhere_is_text_and_all_of_it()
    {
        string[] known = ["\e[201~", "\e[200~", "qd ", "\r", "\u0011", "x", "\e", "\e[", "\e[20", "\e[201", "1~", "~", "é", "\e[A", "\eOP", "\e]0;"];
        var pasted = Gen.Select(Gen.Int[0, known.Length - 1].Select(at => known[at]).Array[1, 40], Gen.Int[1, 12].Array[60]);
        pasted.Sample(
            (pieces, sizes) =>
            {
                var content = string.Concat(pieces);
                var keyboard = new Keyboard();
                var sent = $"\e[200~{content}\e[201~";
                for (var (at, cut) = (0, 0); at < sent.Length; at += sizes[cut++ % sizes.Length])
                    keyboard.Send(sent.Substring(at, Math.Min(sizes[cut % sizes.Length], sent.Length - at)));
                keyboard.Wait();
                keyboard.Keys.ShouldBeEmpty(sent);
                string.Concat(keyboard.Pasted).ShouldBe(Letters(content), sent);
                keyboard.Patience.ShouldBeNull("the paste has ended");
            },
            iter: 2000);
    }

    [Fact]
    public void A_line_that_stands_still_after_a_mark_inside_the_paste_gives_text_while_marks_come()
    {
        var keyboard = new Keyboard().Send("\e[200~one\e[201~").Wait().Send("qd \e[201~qd \e[201~").Wait();
        keyboard.Pasted.ShouldBe(["one", "qd qd "]);
        keyboard.Keys.ShouldBeEmpty();
    }

    [Fact]
    public void A_paste_ends_soon_after_its_mark_and_later_where_a_mark_stood_inside()
    {
        var keyboard = new Keyboard().Send("\e[200~one\e[201~");
        keyboard.Patience.ShouldBe(TimeSpan.FromMilliseconds(100));
        keyboard.Send("two\e[201~").Patience.ShouldBe(TimeSpan.FromSeconds(1));
        keyboard.Wait().Patience.ShouldBeNull();
    }

    [Fact]
    public void Two_pastes_stay_two() =>
        new Keyboard().Send("\e[200~one\e[201~\e[200~two\e[201~").Wait().Pasted.ShouldBe(["one", "two"]);

    [Fact]
    public void What_is_typed_after_a_paste_is_typed() =>
        new Keyboard().Send("\e[200~one\e[201~").Wait().Send("x").Keys.ShouldBe([Key.X]);

    [Fact]
    public void Control_characters_are_left_out_of_a_paste() =>
        new Keyboard().Send("\e[200~a\e]52;c;eA==\ab\u009bc\u0000d\e[201~").Wait().Pasted.ShouldBe(["a]52;c;eA==bcd"]);

    [Fact]
    public void A_paste_that_stops_in_the_middle_is_kept() =>
        new Keyboard().Send("\e[200~half a pa").Wait().Pasted.ShouldBe(["half a pa"]);

    [Fact]
    public void A_paste_of_a_million_letters_is_taken() =>
        new Keyboard().Send($"\e[200~{new string('x', 1_000_000)}\e[201~").Wait().Pasted.Single().Length.ShouldBe(1_000_000);

    /// <summary>Memory stands for work here: a text that is copied again for each mark would square it.</summary>
    [Fact]
    public void The_work_for_a_paste_grows_as_its_length()
    {
        _ = Allocated(100); // what is made once
        var (some, twice, fourfold) = (Allocated(20_000), Allocated(40_000), Allocated(80_000));
        ((double)twice / some).ShouldBeLessThan(2.6);
        ((double)fourfold / twice).ShouldBeLessThan(2.6);
    }

    private static long Allocated(int marks)
    {
        var filter = new InputFilter(TimeSpan.FromMilliseconds(50));
        var sent = $"\e[200~{string.Concat(Enumerable.Repeat("\e[201~qd ", marks))}\e[201~";
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var at = 0; at < sent.Length; at += 4096) filter.Feed(sent.Substring(at, Math.Min(4096, sent.Length - at)));
        filter.Expire().Length.ShouldBe(12 + (3 * marks));
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }

    private static string Letters(string content) => string.Concat(Marks().Replace(content, "").Where(letter => !char.IsControl(letter) || letter is '\r' or '\n' or '\t'));

    [GeneratedRegex("\e\\[20[01]~")]
    private static partial Regex Marks();
}
