using System.Collections.Concurrent;
using System.Drawing;
using Terminal.Gui.Drawing;
using Terminal.Gui.Drivers;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace PanelTui.Terminal;

/// <summary>Sends one write a frame, and only the cells that differ from what the terminal shows.</summary>
/// <remarks>
/// The library takes this for an old console, and so asks the terminal nothing at start. What it writes besides
/// frames (queries, titles, modes) is not passed on; the modes are this program's own business.
/// </remarks>
internal sealed class DiffOutput(ByteSink sink, CellGlyphs glyphs, SgrTable styles, Func<Size> measure) : IOutput
{
    private const int WorthErasing = 4;

    private readonly FrameText _frame = new();
    private readonly ShownScreen _shown = new();
    private readonly ConcurrentQueue<SixelToRender> _noPictures = new();
    private IOutputBuffer? _last;
    private Cursor _wanted = new();
    private bool _isUnknown = true;

    /// <summary>Leaves the terminal, stops the process, and comes back; set by whoever knows how.</summary>
    public Action? OnSuspend { get; set; }

    public bool Force16Colors { get; set; }

    public bool UseKittyGraphics { get; set; }

    /// <summary>An old console is never asked for its colours, its keyboard or its pictures.</summary>
    public bool IsLegacyConsole { get => true; set => _ = value; }

    public Size GetSize() => measure();

    public void SetSize(int width, int height)
    {
        // The size is measured, never set.
    }

    public void Write(IOutputBuffer buffer)
    {
        _last = buffer;
        if (_isUnknown || !_shown.HasSize(buffer.Rows, buffer.Cols))
            Erase(buffer);
        for (var row = 0; row < buffer.Rows; row++)
        {
            if (buffer.DirtyLines[row])
                WriteRow(buffer, row);
            buffer.DirtyLines[row] = false;
        }
    }

    /// <summary>Sends what the turn has drawn, with the cursor in its place, in one write; nothing when nothing changed.</summary>
    public void Flush()
    {
        _frame.Style(SgrTable.Plain);
        if (_wanted is { IsVisible: true, Position: { } at })
            _frame.MoveTo(at.Y, at.X);
        _frame.ShowCursor(_wanted.IsVisible);
        if (!_frame.IsEmpty)
            sink(_frame.Take());
    }

    /// <summary>Adds a sequence of our own, a mode or the clipboard, to the frame.</summary>
    public void Send(string sequence) => _frame.Raw(sequence);

    /// <summary>The terminal was left and is entered again: what was not sent yet is void, and everything painted anew.</summary>
    public void ComeBack(string entrance)
    {
        _frame.Restart();
        _frame.Raw(entrance);
        Repaint();
    }

    /// <summary>Paints the last frame anew, whatever the terminal shows.</summary>
    public void Repaint()
    {
        _frame.Raw(SgrTable.Plain);
        _isUnknown = true;
        if (_last is { } buffer)
            Write(buffer);
        Flush();
    }

    public void SetCursor(Cursor cursor) => _wanted = cursor;

    /// <summary>Hidden, so that the library does not hide it in a write of its own before each frame.</summary>
    public Cursor GetCursor() => new();

    public void Suspend() => OnSuspend?.Invoke();

    public void Write(ReadOnlySpan<char> text)
    {
        // What the library says to the terminal is not passed on.
    }

    public ConcurrentQueue<SixelToRender> GetSixels() => _noPictures;

    public string GetLastOutput() => "";

    public string ToAnsi(IOutputBuffer buffer) => "";

    public void Dispose()
    {
        // The terminal is given back by the host, in every kind of ending.
    }

    private void Erase(IOutputBuffer buffer)
    {
        _frame.EraseScreen();
        _shown.Blank(buffer.Rows, buffer.Cols);
        _isUnknown = false;
        Array.Fill(buffer.DirtyLines, true);
    }

    private void WriteRow(IOutputBuffer buffer, int row)
    {
        var blankFrom = BlankFrom(buffer, row);
        for (var column = 0; column < buffer.Cols; column++)
        {
            var cell = buffer.Contents![row, column];
            var next = column + 1 < buffer.Cols ? buffer.Contents[row, column + 1].Grapheme : null;
            var (glyph, width) = glyphs.For(cell.Grapheme, buffer.Cols - column, next);
            var style = StyleOf(cell);
            if (!_shown.Shows(row, column, glyph, style))
            {
                _frame.MoveTo(row, column);
                if (column >= blankFrom && buffer.Cols - column > WorthErasing)
                {
                    EraseTail(row, column, buffer.Cols);
                    return;
                }

                _frame.Style(style);
                _frame.Put(glyph, width, buffer.Cols);
                _shown.Set(row, column, glyph, style);
            }

            if (width == 2)
                _shown.Set(row, ++column, "", style);
        }
    }

    private void EraseTail(int row, int column, int columns)
    {
        _frame.EraseToEndOfRow();
        for (; column < columns; column++)
            _shown.Set(row, column, " ", SgrTable.Plain);
    }

    /// <summary>The column from which on the row is blank in the terminal's own colours.</summary>
    private int BlankFrom(IOutputBuffer buffer, int row)
    {
        var column = buffer.Cols;
        while (column > 0 && IsBlank(buffer.Contents![row, column - 1]))
            column--;
        return column;
    }

    private bool IsBlank(Cell cell) =>
        cell.Grapheme is " " or "" or null && ReferenceEquals(StyleOf(cell), SgrTable.Plain);

    private string StyleOf(Cell cell) => styles.For(cell.Attribute ?? Attribute.Default);
}
