using System.Collections.Immutable;
using PanelTui.Sheets.Layout;

namespace PanelTui.Sheets;

/// <summary>A drawing in the making.</summary>
internal sealed class Sketch
{
    private readonly ImmutableArray<Mark>.Builder _marks = ImmutableArray.CreateBuilder<Mark>();

    public void Line(double x1, double y1, double x2, double y2, double weight = 1, bool dashed = false) =>
        _marks.Add(new Mark.Stroke([new Point(x1, y1), new Point(x2, y2)], weight, dashed));

    public void Box(double x, double y, double width, double height, Shade fill = Shade.None, bool dashed = false, double weight = 1) =>
        _marks.Add(new Mark.Stroke(
            [new(x, y), new(x + width, y), new(x + width, y + height), new(x, y + height), new(x, y)], weight, dashed, fill));

    public void Circle(double x, double y, double radius, Shade fill = Shade.None) =>
        _marks.Add(new Mark.Circle(new Point(x, y), radius, fill));

    /// <summary>An arc in short straight pieces; degrees clockwise from the right.</summary>
    public void Arc(double x, double y, double radius, double from, double to)
    {
        const int Pieces = 16;
        var points = Enumerable.Range(0, Pieces + 1)
            .Select(piece => (from + ((to - from) * piece / Pieces)) * Math.PI / 180)
            .Select(angle => new Point(x + (radius * Math.Cos(angle)), y + (radius * Math.Sin(angle))));
        _marks.Add(new Mark.Stroke([.. points]));
    }

    /// <summary>One line of text: somewhat smaller where it is wider than there is room, then cut with an ellipsis.</summary>
    public void Text(double x, double y, string text, double size = 8, bool bold = false, Align align = Align.Left, double room = double.MaxValue)
    {
        const double Smallest = 0.75;
        var wide = Typeface.Width(Typeface.Settable(text), size, bold);
        var fitted = wide <= room ? size : Math.Max(size * Smallest, size * room / wide);
        _marks.Add(new Mark.Letters(new Point(x, y), Typeface.Cut(text, room, fitted, bold), fitted, bold, align));
    }

    /// <summary>Several lines, the first on the base line given.</summary>
    public void Lines(double x, double y, IEnumerable<string> lines, double size = 8, Align align = Align.Left, double room = double.MaxValue)
    {
        foreach (var line in lines)
        {
            Text(x, y, line, size, align: align, room: room);
            y += size * 1.25;
        }
    }

    public Drawing Done(string title, double width, double height) => new(title, width, height, _marks.ToImmutable());
}
