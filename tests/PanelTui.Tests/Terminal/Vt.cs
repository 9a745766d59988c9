using System.Drawing;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using PanelTui.Presentation;

namespace PanelTui.Tests.Terminal;

/// <summary>A small terminal: paints the bytes it is sent, and refuses a sequence that this program has no business sending.</summary>
internal sealed partial class Vt(Size size)
{
    private readonly Decoder _decoder = Encoding.UTF8.GetDecoder();
    private (string Glyph, string Style)[][] _cells = Blank(size);
    private string _pending = "";
    private string _style = "";
    private Point _at;
    private bool _shown;

    public List<string> Copied { get; } = [];

    /// <summary>Bytes and writes since <see cref="Start"/>.</summary>
    public (int Bytes, int Writes) Cost { get; private set; }

    public HashSet<string> Modes { get; } = [];

    public Point? Cursor => _shown ? _at : null;

    public string Text => string.Join('\n', Enumerable.Range(0, _cells.Length).Select(Row)).TrimEnd();

    public string StyleAt(int x, int y) => _cells[y][x].Style;

    public string Row(int y)
    {
        var row = Enumerable.Range(0, _cells[0].Length).Select(x => _cells[y][x].Glyph);
        return string.Concat(row).TrimEnd();
    }

    public void Start() => Cost = (0, 0);

    public void Resize(Size now)
    {
        if (now.Height != _cells.Length || now.Width != _cells[0].Length)
            _cells = Blank(now);
    }

    public void Write(ReadOnlySpan<byte> bytes)
    {
        Cost = (Cost.Bytes + bytes.Length, Cost.Writes + 1);
        var letters = new char[bytes.Length + 1];
        var text = _pending + new string(letters, 0, _decoder.GetChars(bytes, letters, flush: false));
        var at = 0;
        while (at < text.Length)
        {
            var taken = text[at] == '\e' ? Sequence(text[at..]) : Letter(text, at);
            if (taken == 0)
                break;
            at += taken;
        }

        _pending = text[at..];
    }

    private int Letter(string text, int at)
    {
        var length = StringInfo.GetNextTextElementLength(text, at);
        var glyph = text.Substring(at, length);
        var width = DisplayText.Width(glyph);
        if (!Modes.Contains("?1049"))
            return length; // plain lines after the full screen
        (_at.X + width).ShouldBeLessThanOrEqualTo(_cells[0].Length, $"'{glyph}' is written past the end of row {_at.Y}");
        _cells[_at.Y][_at.X] = (glyph, _style);
        if (width == 2)
            _cells[_at.Y][_at.X + 1] = ("", _style);
        _at.X += width;
        return length;
    }

    private int Sequence(string text)
    {
        var control = Control().Match(text);
        if (control.Success)
        {
            Act(control.Groups["p"].Value, control.Groups["f"].Value[0]);
            return control.Length;
        }

        var copy = Clipboard().Match(text);
        if (copy.Success)
        {
            Copied.Add(Encoding.UTF8.GetString(Convert.FromBase64String(copy.Groups["t"].Value)));
            return copy.Length;
        }

        var keypad = Keypad().Match(text);
        if (!keypad.Success)
            text.Length.ShouldBeLessThan(40, $"not a sequence this program may send: {text}");
        return keypad.Length;
    }

    private void Act(string parameters, char final)
    {
        var n = parameters.Split(';').Select(part => int.TryParse(part, out var number) ? number : 1).ToArray();
        switch (final)
        {
            case 'H':
                _at = new Point(n.Length > 1 ? n[1] - 1 : 0, n[0] - 1);
                break;
            case 'C':
                _at.X += n[0];
                break;
            case 'm':
                _style = parameters;
                break;
            case 'K' or 'J':
                Erase(_at.X, _at.Y, final == 'J');
                break;
            case 'h' or 'l':
                SetMode(parameters, final == 'h');
                break;
            default:
                throw new InvalidOperationException($"not a sequence this program may send: CSI {parameters} {final}");
        }
    }

    private void SetMode(string mode, bool on)
    {
        _ = on ? Modes.Add(mode) : Modes.Remove(mode);
        if (mode == "?25")
            _shown = on;
    }

    private void Erase(int x, int y, bool all)
    {
        if (all)
            _cells = Blank(new Size(_cells[0].Length, _cells.Length));
        for (; !all && x < _cells[0].Length; x++)
            _cells[y][x] = (" ", "");
    }

    private static (string, string)[][] Blank(Size size) =>
        [.. Enumerable.Range(0, size.Height).Select(_ => Enumerable.Repeat((" ", ""), size.Width).ToArray())];

    [GeneratedRegex(@"^\e\[(?<p>[?0-9;]*)(?<f>[@-~])")]
    private static partial Regex Control();

    [GeneratedRegex(@"^\e\]52;c;(?<t>[A-Za-z0-9+/=]*)\a")]
    private static partial Regex Clipboard();

    [GeneratedRegex(@"^\e[>\\]")]
    private static partial Regex Keypad();
}
