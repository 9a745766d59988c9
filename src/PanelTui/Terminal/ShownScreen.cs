namespace PanelTui.Terminal;

/// <summary>What the terminal shows now, cell by cell: only what differs from it need be sent.</summary>
internal sealed class ShownScreen
{
    private int _columns;
    private (string Glyph, string Style)[] _cells = [];

    public bool HasSize(int rows, int columns) => _columns == columns && _cells.Length == rows * columns;

    public bool Shows(int row, int column, string glyph, string style)
    {
        var cell = _cells[(row * _columns) + column];
        return cell.Glyph == glyph && ReferenceEquals(cell.Style, style);
    }

    public void Set(int row, int column, string glyph, string style) =>
        _cells[(row * _columns) + column] = (glyph, style);

    /// <summary>The screen has been erased: blank, in the terminal's own colours.</summary>
    public void Blank(int rows, int columns)
    {
        if (!HasSize(rows, columns))
            _cells = new (string, string)[rows * columns];
        _columns = columns;
        Array.Fill(_cells, (" ", SgrTable.Plain));
    }
}
