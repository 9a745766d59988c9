using System.Text;

namespace PanelTui.Terminal;

/// <summary>The bytes of a frame while they are put together; knows where the terminal's cursor stands, and its attribute.</summary>
internal sealed class FrameText
{
    /// <summary>A larger frame than fits a packet is held back by the terminal until it is whole.</summary>
    private const int OnePacket = 1200;

    private const string HoldFrame = "\e[?2026h\e[?25l";
    private const string ShowFrame = "\e[?2026l";

    private readonly StringBuilder _text = new();
    private int _row = -1;
    private int _column = -1;
    private string _style = SgrTable.Plain;
    private byte[] _bytes = new byte[16_384];

    public bool IsEmpty => _text.Length == 0;

    public bool CursorIsShown { get; private set; }

    public void MoveTo(int row, int column)
    {
        if (row == _row && column == _column)
            return;
        if (row == _row && _column >= 0 && column > _column)
            MoveRight(column - _column);
        else
            _text.Append("\e[").Append(row + 1).Append(';').Append(column + 1).Append('H');
        (_row, _column) = (row, column);
    }

    /// <param name="glyph">What is printed.</param>
    /// <param name="width">The cells it takes.</param>
    /// <param name="columns">The columns of the screen: past the last one, where the cursor stands is anyone's guess.</param>
    public void Put(string glyph, int width, int columns)
    {
        _text.Append(glyph);
        _column += width;
        if (_column >= columns)
            Forget();
    }

    public void Style(string sequence)
    {
        if (_style != sequence)
            _text.Append(_style = sequence);
    }

    public void EraseToEndOfRow()
    {
        Style(SgrTable.Plain);
        _text.Append("\e[K");
    }

    public void EraseScreen()
    {
        Style(SgrTable.Plain);
        _text.Append("\e[2J");
        Forget();
    }

    public void ShowCursor(bool shown)
    {
        if (CursorIsShown != shown)
            _text.Append(shown ? "\e[?25h" : "\e[?25l");
        CursorIsShown = shown;
    }

    /// <summary>Adds a sequence as it is.</summary>
    public void Raw(string sequence) => _text.Append(sequence);

    /// <summary>The terminal was left and entered again: nothing is known of its cursor.</summary>
    public void Restart()
    {
        _text.Clear();
        _style = SgrTable.Plain;
        CursorIsShown = false;
        Forget();
    }

    /// <summary>Hands the frame over, and is empty again.</summary>
    public ReadOnlySpan<byte> Take()
    {
        if (_text.Length > OnePacket)
            Wrap();
        var most = Encoding.UTF8.GetMaxByteCount(_text.Length);
        if (_bytes.Length < most)
            _bytes = new byte[most];
        var count = 0;
        foreach (var chunk in _text.GetChunks())
            count += Encoding.UTF8.GetBytes(chunk.Span, _bytes.AsSpan(count));
        _text.Clear();
        return _bytes.AsSpan(0, count);
    }

    private void Wrap()
    {
        _text.Insert(0, HoldFrame);
        if (CursorIsShown)
            _text.Append("\e[?25h");
        _text.Append(ShowFrame);
    }

    private void MoveRight(int columns)
    {
        _text.Append("\e[");
        if (columns > 1)
            _text.Append(columns);
        _text.Append('C');
    }

    private void Forget() => _row = _column = -1;
}
