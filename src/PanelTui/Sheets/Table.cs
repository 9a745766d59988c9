using System.Collections.Immutable;
using PanelTui.Engine.Quantities;

namespace PanelTui.Sheets;

/// <summary>A table: every row has as many cells as there are columns.</summary>
internal sealed record Table(ImmutableArray<Column> Columns, ImmutableArray<ImmutableArray<Cell>> Rows)
{
    public static Table Of(ImmutableArray<Column> columns, IEnumerable<ImmutableArray<Cell>> rows) => new(columns, [.. rows]);
}

/// <summary>A column of a table.</summary>
/// <param name="Wraps">Whether its texts may go over several lines where the table is too wide.</param>
internal sealed record Column(string Title, Align Align = Align.Left, bool Wraps = false);

internal enum Align
{
    Left,
    Right,
    Middle,
}

/// <summary>What stands in a table: a text, or a number in plain digits that stays a number in a spreadsheet.</summary>
internal readonly record struct Cell(string Text, bool IsNumber = false)
{
    public static readonly Cell Empty = new("");

    public static implicit operator Cell(string text) => new(text);

    /// <summary>Rounded half up, as calculations are shown.</summary>
    public static Cell Of(decimal value, int decimals = 0) => new(Shown.Rounded(value, decimals), true);
}
