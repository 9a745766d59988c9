using Terminal.Gui.Input;

namespace PanelTui.Pages;

/// <summary>Letters typed on a page that narrows its rows down.</summary>
internal static class PageTyping
{
    /// <summary>Whether the key was a letter for the page, or took one back.</summary>
    public static bool Take(Key key, Page page)
    {
        if (!page.TakesText) return false;
        if (key == Key.Backspace)
        {
            page.Typed = page.Typed.Length == 0 ? "" : string.Concat(page.Typed.EnumerateRunes().SkipLast(1).Select(rune => $"{rune}"));
        }
        else if (!key.IsCtrl && !key.IsAlt && key.AsRune is { Value: >= ' ' } rune)
        {
            page.Typed += $"{rune}";
        }
        else
        {
            return false;
        }

        page.Place = PagePlace.Start;
        return true;
    }
}
