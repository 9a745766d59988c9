using System.Collections.Immutable;
using System.Drawing;
using PanelTui.Pages;
using PanelTui.Presentation;

namespace PanelTui.Screens;

/// <summary>The pages that lie over the face, one over another, and where the reader is on the one on top.</summary>
/// <param name="session">What the pages show.</param>
/// <param name="body">How many columns and rows a page has, its heading included.</param>
internal sealed class OpenPages(Session session, Func<Page, Size> body)
{
    private readonly Stack<Page> _pages = [];

    public Page? Top => _pages.TryPeek(out var page) ? page : null;

    /// <summary>The chosen row; nothing where nothing can be chosen.</summary>
    public PageRow? Chosen => Top is { } page && RowsOf(page) is var rows && page.Place.Chosen >= 0 && page.Place.Chosen < rows.Length
        ? rows[page.Place.Chosen] is { CanBeChosen: true } row ? row : null
        : null;

    public ImmutableArray<ImmutableArray<TextRun>> Text => PageText.Of(Top!, session, body(Top!).Width, body(Top!).Height);

    private int HeightOf(Page page) => Math.Max(1, body(page).Height - 1 - PinnedOn(page));

    private int PinnedOn(Page page) => PageText.PinnedOf(page, session, body(page).Width, body(page).Height).Length;

    public void Open(Page page)
    {
        _pages.Push(page);
        if (body(page).Height > 0) page.Place = page.Place.Fitted(RowsOf(page), HeightOf(page)).InSight(HeightOf(page));
    }

    public void Close()
    {
        if (_pages.TryPop(out var page)) (page as IDisposable)?.Dispose();
    }

    public void CloseAll()
    {
        while (_pages.Count > 0) Close();
    }

    public void Walk(int rows)
    {
        if (Top is { } page) page.Place = page.Place.By(rows, RowsOf(page), HeightOf(page));
    }

    /// <summary>Chooses the row that stands so many rows below the heading; false where it was chosen before.</summary>
    public bool Choose(int below)
    {
        if (Top is not { } page) return true;
        var scrolled = below - PinnedOn(page);
        var (row, rows) = (page.Place.Top + scrolled, RowsOf(page));
        if (scrolled < 0 || row >= rows.Length || !rows[row].CanBeChosen) return true;
        if (row == page.Place.Chosen) return false;
        page.Place = page.Place with { Chosen = row };
        return true;
    }

    private ImmutableArray<PageRow> RowsOf(Page page) => page.Rows(session, body(page).Width - PageText.Margin);
}
