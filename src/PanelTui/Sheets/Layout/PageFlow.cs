using System.Collections.Immutable;

namespace PanelTui.Sheets.Layout;

/// <summary>Pages being filled from the top: whoever adds something says first how much height it needs.</summary>
internal sealed class PageFlow(Paper paper, double foot)
{
    private readonly List<ImmutableArray<Mark>.Builder> _pages = [ImmutableArray.CreateBuilder<Mark>()];

    public double Left => paper.Margin;

    public double Width => paper.Inside.Width;

    /// <summary>Where the next thing begins.</summary>
    public double Top { get; private set; } = paper.Margin;

    /// <summary>What is left of this page.</summary>
    public double Room => Bottom - Top;

    /// <summary>What a page holds when nothing is on it.</summary>
    public double Whole => Bottom - paper.Margin;

    private double Bottom => paper.Height - paper.Margin - foot;

    public void Add(Mark mark) => _pages[^1].Add(mark);

    public void Skip(double height) => Top += height;

    /// <summary>A new page where there is not as much room left.</summary>
    /// <returns>Whether a new page was begun.</returns>
    public bool Need(double height)
    {
        if (height <= Room || Top <= paper.Margin) return false;
        _pages.Add(ImmutableArray.CreateBuilder<Mark>());
        Top = paper.Margin;
        return true;
    }

    public ImmutableArray<ImmutableArray<Mark>> Pages => [.. _pages.Select(page => page.ToImmutable())];
}
