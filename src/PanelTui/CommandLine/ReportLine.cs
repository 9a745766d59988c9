using PanelTui.Presentation;

namespace PanelTui.CommandLine;

/// <summary>A line of a report: folded on a terminal, its one telling word in color where color is wanted.</summary>
/// <param name="Before">What stands before the word.</param>
/// <param name="Word">The word, such as `error`; empty where nothing is painted.</param>
/// <param name="After">What stands after it.</param>
internal sealed record ReportLine(string Before, string Word, string After, Tint Tint)
{
    private const int Hang = 4;

    /// <summary>A line without a painted word.</summary>
    public static ReportLine Plain(string text) => new(text, "", "", Tint.None);

    /// <summary>The text, with nothing in it that a terminal obeys.</summary>
    public string Text => DisplayText.Clean($"{Before}{Word}{After}");

    /// <summary>The rows as they are printed; one row where there is no screen to fold at.</summary>
    public IEnumerable<string> Rows(OutputScreen? screen, bool inColor)
    {
        var rows = Folded(Text, screen);
        return inColor && Tint != Tint.None ? [Painted(rows[0]), .. rows.Skip(1)] : rows;
    }

    /// <summary>A line folded at the width of the screen, what follows the first row set in by four columns more.</summary>
    public static string[] Folded(string line, OutputScreen? screen)
    {
        if (screen is null || screen.Columns < OutputScreen.LeastColumns || DisplayText.Width(line) <= screen.Columns) return [line];
        var indent = new string(' ', line.Length - line.TrimStart(' ').Length);
        string[] rows = [.. Wrapped.Of(line, screen.Columns - indent.Length - Hang)];
        return [.. rows.Select((row, at) => at == 0 ? $"{indent}{row}" : $"{indent}{new string(' ', Hang)}{row}")];
    }

    /// <summary>The row with the word in its color; as it is where folding has taken the word from it.</summary>
    private string Painted(string row)
    {
        var at = DisplayText.Clean(Before).Length;
        return at + Word.Length <= row.Length && row.AsSpan(at, Word.Length).SequenceEqual(Word)
            ? $"{row[..at]}{Coloring.Of(Tint, Word)}{row[(at + Word.Length)..]}"
            : row;
    }
}
