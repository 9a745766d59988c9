using System.Drawing;
using System.Text;
using CsCheck;
using PanelTui.Terminal;
using Terminal.Gui.Drivers;
using Size = System.Drawing.Size;

namespace PanelTui.Tests.Terminal;

public sealed class DiffOutputTests : IDisposable
{
    private static readonly Size Small = new(10, 3);

    private static readonly Gen<string> Stroke =
        Gen.OneOf([.. new[] { "pump", " ", "          ", "冷蔵", "e\u0301", "─┐", "x" }.Select(Gen.Const)]);

    private readonly List<string> _writes = [];
    private readonly OutputBufferImpl _buffer = new() { CurrentAttribute = Look.Plain };
    private readonly Vt _terminal = new(Small);
    private readonly DiffOutput _output;

    public DiffOutputTests()
    {
        _output = Output(ascii: false, ColourDepth.Sixteen);
        _terminal.Modes.Add("?1049");
        _buffer.SetSize(Small.Width, Small.Height);
        _buffer.FillRect(new Rectangle(Point.Empty, Small), ' ');
    }

    [Fact]
    public void The_first_frame_sends_what_is_not_blank() => Frame(2, 1, "pump").ShouldBe("\e[2J\e[2;3Hpump");

    [Fact]
    public void What_is_shown_already_is_not_sent_again()
    {
        Frame(2, 1, "pump");
        Frame(2, 1, "pump").ShouldBe("");
        Frame(2, 1, "pull").ShouldBe("\e[2;5Hll");
    }

    [Fact]
    public void Letters_typed_one_after_the_other_cost_a_byte_each()
    {
        Frame(0, 0, "p");
        Frame(1, 0, "u").ShouldBe("u");
    }

    [Fact]
    public void The_rest_of_a_row_is_erased_at_once()
    {
        Frame(0, 0, "a pump and");
        Frame(1, 0, "         ").ShouldBe("\e[1;3H\e[K");
    }

    [Fact]
    public void A_frame_and_its_cursor_are_one_write()
    {
        _output.SetCursor(new Cursor { Position = new Point(4, 2), Style = CursorStyle.SteadyBar });
        Frame(0, 0, "p").ShouldBe("\e[2J\e[1;1Hp\e[3;5H\e[?25h");
        _writes.Count.ShouldBe(1);
    }

    [Fact]
    public void A_cursor_that_stays_costs_nothing()
    {
        _output.SetCursor(new Cursor { Position = new Point(4, 2), Style = CursorStyle.SteadyBar });
        Frame(0, 0, "p");
        _output.Flush();
        _writes.Count.ShouldBe(1);
    }

    [Fact]
    public void A_large_frame_is_held_back_until_it_is_whole()
    {
        _buffer.SetSize(80, 24);
        _buffer.FillRect(new Rectangle(0, 0, 80, 24), 'x');
        Frame(0, 0, "p").ShouldSatisfyAllConditions(
            frame => frame.ShouldStartWith("\e[?2026h\e[?25l"),
            frame => frame.ShouldEndWith("\e[?2026l"));
    }

    [Fact]
    public void After_coming_back_everything_is_painted_anew()
    {
        Frame(2, 1, "pump");
        _writes.Clear();
        _output.ComeBack("<in>");
        _writes.ShouldBe(["<in>\e[m\e[2J\e[2;3Hpump"]);
    }

    [Fact]
    public void Painting_anew_loses_nothing_that_was_to_be_sent()
    {
        Frame(2, 1, "pump");
        _writes.Clear();
        _output.Send("\e[?1002l");
        _output.Repaint();
        _writes.ShouldBe(["\e[?1002l\e[m\e[2J\e[2;3Hpump"]);
    }

    [Fact]
    public void Another_size_is_painted_anew()
    {
        Frame(2, 1, "pump");
        _buffer.SetSize(8, 2);
        _buffer.FillRect(new Rectangle(0, 0, 8, 2), ' ');
        Frame(0, 0, "well").ShouldBe("\e[2J\e[1;1Hwell");
    }

    [Fact]
    public void A_look_is_switched_on_and_off()
    {
        _buffer.CurrentAttribute = Look.Leg('A');
        Frame(0, 0, "A").ShouldBe("\e[2J\e[1;1H\e[0;36mA\e[m");
    }

    [Fact]
    public void What_the_library_says_to_the_terminal_is_not_passed_on()
    {
        ((IOutput)_output).Write("\e[c");
        _output.Flush();
        _writes.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("\u202e")]
    [InlineData("\u200b")]
    [InlineData("\u009b")]
    public void A_cell_never_prints_what_moves_or_hides(string hostile) => Frame(0, 0, hostile).ShouldNotContain(hostile);

    [Fact]
    public void A_plain_terminal_gets_plain_borders()
    {
        using var plain = Output(ascii: true, ColourDepth.None);
        _buffer.AddStr("┌─┐é冷");
        plain.Write(_buffer);
        plain.Flush();
        _writes.ShouldBe(["\e[2J\e[1;1H+-+e??"]);
    }

    [Fact]
    public void On_a_plain_terminal_an_arrow_is_no_greater_than_sign()
    {
        using var plain = Output(ascii: true, ColourDepth.None);
        _buffer.AddStr("24.8 → 9.7");
        plain.Write(_buffer);
        plain.Flush();
        _writes.ShouldBe(["\e[2J\e[1;1H24.8->\e[C9.7"]);
    }

    [Fact]
    public void Frame_after_frame_the_terminal_shows_what_was_drawn() =>
        Gen.Select(Gen.Int[0, 9], Gen.Int[0, 2], Stroke, Gen.Bool)
            .Array[1, 30].Sample(ShowsWhatWasDrawn, iter: 300, threads: 1);

    public void Dispose() => _output.Dispose();

    private bool ShowsWhatWasDrawn((int X, int Y, string Text, bool Strong)[] strokes)
    {
        foreach (var (x, y, text, strong) in strokes.AtLeastOne())
        {
            _buffer.CurrentAttribute = strong ? Look.Strong : Look.Plain;
            Frame(x, y, text);
            for (var row = 0; row < Small.Height; row++)
                _terminal.Row(row).ShouldBe(Drawn(row), $"row {row} after '{text}' at {x},{y}");
        }

        return true;
    }

    private string Drawn(int y)
    {
        var row = new StringBuilder();
        for (var x = 0; x < Small.Width; x++)
        {
            var glyph = _buffer.Contents![y, x].Grapheme;
            row.Append(glyph);
            if (PanelTui.Presentation.DisplayText.Width(glyph) == 2)
                x++;
        }

        return row.ToString().TrimEnd();
    }

    private string Frame(int x, int y, string text)
    {
        var before = _writes.Count;
        _buffer.Move(x, y);
        _buffer.AddStr(text);
        _output.Write(_buffer);
        _output.Flush();
        return string.Concat(_writes.Skip(before));
    }

    private DiffOutput Output(bool ascii, ColourDepth depth) => new(
        bytes =>
        {
            _writes.Add(Encoding.UTF8.GetString(bytes));
            if (_buffer.Cols == Small.Width)
                _terminal.Write(bytes);
        },
        new CellGlyphs(ascii),
        new SgrTable(depth),
        () => Small);
}
