using System.Collections.Immutable;

namespace PanelTui.Pages;

/// <summary>Where a reader is on a page: the row on top and the row that is chosen, from 0.</summary>
internal readonly record struct PagePlace(int Top, int Chosen)
{
    public static readonly PagePlace Start = new(0, 0);

    /// <summary>Moves the choice over so many rows; where nothing further can be chosen, the page moves.</summary>
    public PagePlace By(int rows, ImmutableArray<PageRow> page, int height)
    {
        var here = Fitted(page, height);
        var moved = Math.Abs(rows) > 1 ? here with { Top = here.Top + rows } : here;
        return here.Next(rows, page) is { } next
            ? (moved.Fitted(page, height) with { Chosen = next }).InSight(height).Fitted(page, height)
            : (here with { Top = here.Top + rows }).Fitted(page, height);
    }

    /// <summary>The same place on a page whose rows may have changed.</summary>
    public PagePlace Fitted(ImmutableArray<PageRow> page, int height) =>
        new(Math.Clamp(Top, 0, Math.Max(0, page.Length - height)), Choosable(page));

    /// <summary>The page moved no more than it takes to see the chosen row.</summary>
    public PagePlace InSight(int height) => Chosen < 0 ? this : this with { Top = Math.Clamp(Top, Math.Max(0, Chosen - height + 1), Chosen) };

    private int Choosable(ImmutableArray<PageRow> page)
    {
        var chosen = Chosen;
        return Enumerable.Range(0, page.Length).Where(row => page[row].CanBeChosen)
            .OrderBy(row => Math.Abs(row - chosen))
            .FirstOrDefault(-1);
    }

    /// <summary>The row that can be chosen nearest to so many rows on; nothing where there is none on that side.</summary>
    private int? Next(int rows, ImmutableArray<PageRow> page)
    {
        var chosen = Chosen;
        var side = Enumerable.Range(0, page.Length)
            .Where(row => page[row].CanBeChosen && Math.Sign(row - chosen) == Math.Sign(rows))
            .ToList();
        if (chosen < 0 || side.Count == 0) return null;
        var within = side.Where(row => Math.Abs(row - chosen) <= Math.Abs(rows)).ToList();
        return within.Count > 0 ? within.MaxBy(row => Math.Abs(row - chosen)) : side.MinBy(row => Math.Abs(row - chosen));
    }
}
