using System.Collections.Immutable;
using System.Text;

namespace PanelTui.Presentation;

/// <summary>Text on its way into a spreadsheet and back: cells with tabs between them, one row a line.</summary>
internal static class SpreadsheetText
{
    /// <summary>What makes a spreadsheet take a text for a formula, in plain and in wide letters (CWE-1236).</summary>
    private const string Formula = "=+-@＝＋－＠";

    /// <summary>The text after an apostrophe where a spreadsheet would take it for a formula.</summary>
    public static string NoFormula(string text) => IsFormula(text) ? $"'{text}" : text;

    /// <summary>A row to be copied: no cell has a tab, a line end or anything else that cannot be seen.</summary>
    public static string Line(ImmutableArray<string> cells) => string.Join('\t', cells.Select(cell => Quoted(NoFormula(DisplayText.Clean(cell)))));

    /// <summary>The rows of cells in what was pasted, blank lines left out. A cell in double quotes may hold tabs, and line ends, which become blanks.</summary>
    public static ImmutableArray<ImmutableArray<string>> Rows(string text)
    {
        var rows = ImmutableArray.CreateBuilder<ImmutableArray<string>>();
        var cells = ImmutableArray.CreateBuilder<string>();
        for (var at = 0; at <= text.Length; at++)
        {
            var (cell, end) = Cell(text, at);
            cells.Add(cell);
            at = end;
            if (at < text.Length && text[at] == '\t') continue;
            if (cells.Any(one => one.Length > 0)) rows.Add(cells.ToImmutable());
            cells.Clear();
        }

        return rows.ToImmutable();
    }

    /// <summary>The cell that begins there, and where it ends.</summary>
    private static (string Cell, int End) Cell(string text, int from)
    {
        if (InQuotes(text, from) is { } quoted) return quoted;
        var end = text.AsSpan(from).IndexOfAny("\t\r\n");
        end = end < 0 ? text.Length : from + end;
        var cell = text[from..end].Trim();
        return (cell.StartsWith('\'') && IsFormula(cell[1..]) ? cell[1..] : cell, end);
    }

    /// <summary>A cell that begins with a quote which is closed right before a tab or a line end; any other quote is a letter.</summary>
    private static (string Cell, int End)? InQuotes(string text, int from)
    {
        if (from >= text.Length || text[from] != '"') return null;
        var cell = new StringBuilder();
        for (var at = from + 1; at < text.Length; at++)
        {
            if (text[at] != '"') cell.Append(text[at] is '\n' or '\r' or '\t' ? ' ' : text[at]);
            else if (at + 1 < text.Length && text[at + 1] == '"') cell.Append(text[at++]);
            else return at + 1 == text.Length || text[at + 1] is '\t' or '\n' or '\r' ? ($"{cell}".Trim(), at + 1) : null;
        }

        return null;
    }

    private static string Quoted(string cell) => cell.StartsWith('"') ? $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : cell;

    private static bool IsFormula(string text) => text.AsSpan().TrimStart() is { IsEmpty: false } first && Formula.Contains(first[0], StringComparison.Ordinal);
}
