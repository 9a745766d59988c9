using System.Collections.Immutable;
using PanelTui.Sheets;
using PanelTui.Sheets.Layout;

namespace PanelTui.Tests.Sheets;

/// <summary>Nothing on a picture or a page runs into anything else, or over the edge.</summary>
public class PictureTests
{
    public static TheoryData<string, string> All
    {
        get
        {
            var rows = new TheoryData<string, string>();
            foreach (var path in SheetCases.Examples)
                foreach (var kind in SheetKind.All) rows.Add(Path.GetFileName(path), kind.Name);
            return rows;
        }
    }

    [Theory, MemberData(nameof(All))]
    public void Letters_on_a_page_overlap_no_others(string file, string kind)
    {
        foreach (var paper in Paper.All.AtLeastOne())
            foreach (var page in Pages(file, kind, paper).AtLeastOne()) Overlap(page).ShouldBeNull();
    }

    [Theory, MemberData(nameof(All))]
    public void Everything_stays_inside_the_margins(string file, string kind)
    {
        foreach (var paper in Paper.All.AtLeastOne())
            foreach (var box in Pages(file, kind, paper).SelectMany(Boxes).AtLeastOne())
            {
                box.Left.ShouldBeGreaterThan(paper.Margin - 4, box.Text);
                box.Right.ShouldBeLessThan(paper.Width - paper.Margin + 4, box.Text);
                box.Bottom.ShouldBeLessThan(paper.Height - paper.Margin + 4, box.Text);
            }
    }

    private static ImmutableArray<Drawing> Pages(string file, string kind, Paper paper)
    {
        var text = File.ReadAllText(Path.Combine(SourceTree.Root, "examples", file));
        return PageLayout.Of(SheetKind.Find(kind)!.Make(SheetCases.Read(text), new SheetChoices(paper, 12)), paper);
    }

    private static string? Overlap(Drawing page)
    {
        var boxes = Boxes(page).ToList();
        for (var one = 0; one < boxes.Count; one++)
            for (var other = one + 1; other < boxes.Count; other++)
                if (boxes[one].Meets(boxes[other])) return $"{boxes[one].Text} / {boxes[other].Text}";
        return null;
    }

    private static IEnumerable<Box> Boxes(Drawing page) => page.Marks.OfType<Mark.Letters>().Select(Box.Of);

    /// <summary>Around small letters: from the height of an x to the base line, somewhat narrower than the letters.</summary>
    private sealed record Box(string Text, double Left, double Right, double Top, double Bottom)
    {
        public static Box Of(Mark.Letters letters)
        {
            var width = Typeface.Width(letters.Text, letters.Size, letters.Bold);
            var left = letters.Align switch { Align.Right => letters.At.X - width, Align.Middle => letters.At.X - (width / 2), _ => letters.At.X };
            return new Box(letters.Text, left, left + width, letters.At.Y - (letters.Size * 0.6), letters.At.Y);
        }

        public bool Meets(Box other) => Left < other.Right - 0.1 && other.Left < Right - 0.1 && Top < other.Bottom && other.Top < Bottom;
    }
}
