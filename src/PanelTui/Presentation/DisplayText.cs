using System.Text;

namespace PanelTui.Presentation;

/// <summary>
/// The one gate for text that comes from a file, a path, another program or a fault, before it is drawn or printed:
/// what could move the cursor, hide, or turn the reading order around is shown as ⟨U+202E⟩ instead.
/// </summary>
public static class DisplayText
{
    /// <summary>The text as it may be shown, on one line; the same string when nothing had to be changed.</summary>
    /// <param name="text">Any text, also with halves of surrogate pairs in it.</param>
    /// <param name="ascii">For a terminal that knows ASCII alone: other letters are replaced column for column.</param>
    public static string Clean(string text, bool ascii = false)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (IsPlain(text))
            return text;
        var shown = new StringBuilder(text.Length + 16);
        foreach (var element in TextElement.Split(text))
            element.AppendTo(shown, ascii);
        return shown.ToString();
    }

    /// <summary>The columns the text takes once it is clean: none for a mark over a letter, two for a wide letter.</summary>
    public static int Width(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return IsPlain(text) ? text.Length : TextElement.Split(Clean(text)).Sum(element => element.Columns);
    }

    /// <summary>The clean text in exactly so many columns: cut with an ellipsis, or filled with blanks.</summary>
    public static string Fit(string text, int columns, bool ascii = false)
    {
        var clean = Clean(text, ascii);
        var width = Width(clean);
        if (columns <= 0)
            return "";
        return width <= columns
            ? clean + new string(' ', columns - width)
            : Cut(clean, columns - 1, ascii ? '~' : '…');
    }

    /// <summary>Whether the text can be shown as it is.</summary>
    public static bool IsShowable(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return IsPlain(text) || TextElement.Split(text).All(element => element.IsShowable);
    }

    private static bool IsPlain(string text) => !text.AsSpan().ContainsAnyExceptInRange(' ', '~');

    private static string Cut(string clean, int room, char ellipsis)
    {
        var shown = new StringBuilder(clean.Length);
        foreach (var element in TextElement.Split(clean))
        {
            if (element.Columns > room)
                break;
            room -= element.Columns;
            shown.Append(element.Text);
        }

        return shown.Append(ellipsis).Append(' ', room).ToString();
    }
}
