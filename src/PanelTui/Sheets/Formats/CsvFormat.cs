using PanelTui.Presentation;

namespace PanelTui.Sheets.Formats;

/// <summary>A sheet's records as RFC 4180 says; the deference is the last record.</summary>
internal static class CsvFormat
{
    /// <summary>Nothing for a sheet without records.</summary>
    public static string? Of(Sheet sheet)
    {
        if (sheet.Records is not { } table) return null;
        IEnumerable<string> lines =
        [
            Line(table.Columns.Select(column => new Cell(column.Title))),
            .. table.Rows.Select(row => Line(row)),
            Line(table.Columns.Select((_, at) => new Cell(at == 0 ? sheet.Foot : ""))),
        ];
        return string.Concat(lines.Select(line => $"{line}\r\n"));
    }

    private static string Line(IEnumerable<Cell> cells) => string.Join(',', cells.Select(Of));

    private static string Of(Cell cell)
    {
        if (cell.IsNumber) return cell.Text;
        var text = SpreadsheetText.NoFormula(DisplayText.Clean(cell.Text));
        return text.AsSpan().IndexOfAny(",\"") >= 0 || text != text.Trim() ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text;
    }
}
