using CsCheck;
using Terminal.Gui.Input;

namespace PanelTui.Tests.Terminal;

public class InputFilterTests
{
    public static TheoryData<string, Key> Known => new()
    {
        { "a", Key.A },
        { "A", Key.A.WithShift },
        { "é", new Key('é') },
        { "\r", Key.Enter },
        { "\t", Key.Tab },
        { "\u007f", Key.Backspace },
        { "\b", Key.Backspace },
        { "\u0011", Key.Q.WithCtrl },
        { "\u001a", Key.Z.WithCtrl },
        { "\e[A", Key.CursorUp },
        { "\eOA", Key.CursorUp },
        { "\e[1;5C", Key.CursorRight.WithCtrl },
        { "\e[1;2B", Key.CursorDown.WithShift },
        { "\eO5D", Key.CursorLeft.WithCtrl },
        { "\eOd", Key.CursorLeft.WithCtrl }, // rxvt
        { "\e[b", Key.CursorDown.WithShift }, // rxvt
        { "\e[H", Key.Home },
        { "\eOF", Key.End },
        { "\e[1~", Key.Home },
        { "\e[4~", Key.End },
        { "\e[7~", Key.Home }, // rxvt
        { "\e[8~", Key.End }, // rxvt
        { "\e[8^", Key.End.WithCtrl }, // rxvt
        { "\e[2~", Key.InsertChar },
        { "\e[3~", Key.Delete },
        { "\e[3;5~", Key.Delete.WithCtrl },
        { "\e[3$", Key.Delete.WithShift }, // rxvt
        { "\e[5~", Key.PageUp },
        { "\e[6~", Key.PageDown },
        { "\eOP", Key.F1 },
        { "\e[[A", Key.F1 }, // Linux console
        { "\e[[E", Key.F5 }, // Linux console
        { "\e[11~", Key.F1 },
        { "\e[15~", Key.F5 },
        { "\e[21~", Key.F10 },
        { "\e[24;2~", Key.F12.WithShift },
        { "\e[1;2P", Key.F1.WithShift },
        { "\e[Z", Key.Tab.WithShift },
        { "\eOM", Key.Enter }, // keypad
        { "\eOk", new Key('+') }, // keypad
        { "\eOu", Key.D5 }, // keypad
        { "\ea", Key.A.WithAlt },
        { "\eA", Key.A.WithAlt.WithShift },
        { "\e5", Key.D5.WithAlt },
        { "\eé", new Key('é').WithAlt },
        { "\e\r", Key.Enter.WithAlt },
        { "\e\u007f", Key.Backspace.WithAlt },
        { "\e\u0001", Key.A.WithAlt.WithCtrl },
        { "\e[27;5;97~", Key.A.WithCtrl }, // modifyOtherKeys
        { "\e[97;5u", Key.A.WithCtrl },
    };

    public static TheoryData<string> NoKeys =>
    [
        "\e]10;rgb:ffff/ffff/ffff\a", "\e]11;rgb:0000/0000/0000\e\\", "\eP>|term 1.0\e\\", "\eP1+r544e=787465726d\e\\",
        "\e_Gi=31;OK\e\\", "\e[?62;22c", "\e[>0;276;0c", "\e[12;40R", "\e[1;5R", "\e[?12;40R", "\e[8;24;80t", "\e[0n",
        "\e[?2026;2$y", "\e[4;1$y", "\e[?1u", "\e[I", "\e[O", "\e]52;c;cm0gLXJm\a", "\e[25~", "\e[29~", "\e[34~", "\e[999999999999~",
        "\e[M !!", "\e[<0;99999999999;1M", "\e[<35;1M", "\e[E", "\e[?1;2S", "\e[3;4;5;6~", "\e[1;99A", "\u009b",
    ];

    [Theory]
    [MemberData(nameof(Known))]
    public void A_key_of_any_terminal_arrives_as_that_key(string sent, Key key) =>
        new Keyboard().Send(sent).Keys.ShouldBe([key]);

    [Theory]
    [MemberData(nameof(Known))]
    public void A_key_cut_in_two_by_the_line_arrives_whole(string sent, Key key)
    {
        for (var cut = 1; cut < sent.Length; cut++)
            new Keyboard().Send(sent[..cut]).Send(sent[cut..]).Keys.ShouldBe([key], $"cut after {cut}");
    }

    [Theory]
    [MemberData(nameof(Known))]
    public void A_key_whose_escape_came_long_before_is_never_typed_as_text(string sent, Key key)
    {
        if (sent is ['\e', '[', ..] or ['\e', 'O', (>= 'A' and <= 'D') or 'F' or 'H' or (>= 'P' and <= 'S')])
            new Keyboard().Send("\e").Wait().Send(sent[1..]).Typed.ShouldBe("", $"the end of {key}");
    }

    [Fact]
    public void The_rest_of_a_key_is_waited_for_a_second()
    {
        foreach (var start in (string[])["\e[", "\e[1;", "\eO", "\e]11;rgb", "\eP1+r"])
            new Keyboard().Send(start).Patience.ShouldBe(TimeSpan.FromSeconds(1), start);
    }

    [Theory]
    [MemberData(nameof(NoKeys))]
    public void What_is_no_key_does_nothing(string sent) => new Keyboard().Send(sent).Send("x").Keys.ShouldBe([Key.X]);

    [Theory]
    [MemberData(nameof(NoKeys))]
    public void An_answer_cut_anywhere_does_nothing(string sent)
    {
        for (var cut = 1; cut < sent.Length; cut++)
            new Keyboard().Send(sent[..cut]).Send(sent[cut..]).Send("x").Keys.ShouldBe([Key.X], $"cut after {cut}");
    }

    [Fact]
    public void Escape_alone_is_a_key_once_nothing_follows()
    {
        var keyboard = new Keyboard().Send("\e");
        keyboard.Keys.ShouldBeEmpty();
        keyboard.Patience.ShouldBe(TimeSpan.FromMilliseconds(50));
        keyboard.Wait().Keys.ShouldBe([Key.Esc]);
    }

    [Fact]
    public void Two_escapes_are_two_keys() => new Keyboard().Send("\e\e").Wait().Keys.ShouldBe([Key.Esc, Key.Esc]);

    [Fact]
    public void Letters_after_an_escape_are_letters() =>
        new Keyboard().Send("\e").Wait().Send("O").Wait().Send("ven").Typed.ShouldBe("Oven");

    [Fact]
    public void A_bracket_after_an_escape_is_a_bracket() =>
        new Keyboard().Send("\e").Wait().Send("[").Wait().Typed.ShouldBe("[");

    [Fact]
    public void Nothing_is_waited_for_when_nothing_is_held() => new Keyboard().Send("a\e[B\eOP").Patience.ShouldBeNull();

    [Fact]
    public void A_click_arrives_with_its_place() =>
        new Keyboard().Send("\e[<0;6;3M").Mouse.Single().ScreenPosition.ShouldBe(new System.Drawing.Point(5, 2));

    [Fact]
    public void Every_sequence_with_a_number_and_a_tilde_is_survived()
    {
        for (var number = 0; number < 400; number++)
        {
            new Keyboard().Send($"\e[{number}~").Typed.ShouldBe("");
            new Keyboard().Send($"\e[{number};5~").Typed.ShouldBe("");
        }
    }

    [Fact]
    public void Every_control_sequence_and_every_shifted_letter_is_survived()
    {
        for (var final = '@'; final <= '~'; final++)
        {
            foreach (var parameters in (string[])["", "1", "1;5", "?1", ">1", "=1", "<0;1;1", "1;2;3", "1:2", ";", "5;5", "99999"])
                _ = new Keyboard().Send($"\e[{parameters}{final}").Wait().Wait();
            _ = new Keyboard().Send($"\eO{final}").Wait().Wait();
            _ = new Keyboard().Send($"\e{final}").Wait().Wait();
        }
    }

    [Fact]
    public void Noise_on_the_line_is_survived() =>
        Gen.Select(Noise, Gen.Bool).Array[1, 10].Sample(
            parts =>
            {
                var keyboard = new Keyboard();
                foreach (var (noise, wait) in parts)
                    _ = wait ? keyboard.Send(noise).Wait() : keyboard.Send(noise);
                keyboard.Wait().Wait().Keys.Clear();
                return keyboard.Send("x").Keys is [var key] && key == Key.X;
            },
            iter: 3_000);

    private static readonly Gen<string> Noise = Gen
        .Char["\e\e\e[[O]P_?;:<0123456789~$^@ABCMRHuctmyn \a\\x\u009bé\u0001\u007f"]
        .Array[0, 12].Select(letters => new string(letters));
}
