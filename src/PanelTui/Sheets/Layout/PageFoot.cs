using PanelTui.Engine.Quantities;

namespace PanelTui.Sheets.Layout;

/// <summary>What stands at the foot of every page: the deference, and which page it is.</summary>
internal static class PageFoot
{
    private const double Size = 6.5;
    private const double Line = 8;

    public static double Height(Paper paper) => (Lines(paper).Count * Line) + 8;

    public static IEnumerable<Mark> Marks(Paper paper, int page, int pages)
    {
        var lines = Lines(paper);
        var top = paper.Height - paper.Margin - (lines.Count * Line);
        yield return new Mark.Stroke([new(paper.Margin, top - 3), new(paper.Width - paper.Margin, top - 3)], 0.5);
        for (var at = 0; at < lines.Count; at++)
            yield return new Mark.Letters(new(paper.Margin, top + Size + (at * Line)), lines[at], Size);
        yield return new Mark.Letters(
            new(paper.Width - paper.Margin, top + Size), $"{Shown.Exactly(page)} of {Shown.Exactly(pages)}", Size, Align: Align.Right);
    }

    private static List<string> Lines(Paper paper) => [.. Typeface.Wrap(Sheet.Deference, paper.Inside.Width - 36, Size)];
}
