using System.Collections.Immutable;

namespace PanelTui.Sheets;

/// <summary>A picture of lines and letters in points (1/72 inch), from its upper left corner.</summary>
/// <param name="Title">What it shows, for those who can't see it.</param>
internal sealed record Drawing(string Title, double Width, double Height, ImmutableArray<Mark> Marks);

/// <summary>One stroke or one line of letters.</summary>
internal abstract record Mark
{
    private Mark()
    {
    }

    /// <summary>Through its points in order; closed and filled where it has a shade.</summary>
    /// <param name="Weight">Points; nothing is stroked at 0.</param>
    public sealed record Stroke(ImmutableArray<Point> Points, double Weight = 1, bool Dashed = false, Shade Fill = Shade.None) : Mark;

    public sealed record Circle(Point Centre, double Radius, Shade Fill = Shade.None) : Mark;

    /// <summary>A line of letters; <paramref name="At"/> is on the base line.</summary>
    public sealed record Letters(Point At, string Text, double Size, bool Bold = false, Align Align = Align.Left) : Mark;
}

internal readonly record struct Point(double X, double Y);

/// <summary>What an area is filled with: greys that stay apart on a black and white printer.</summary>
internal enum Shade
{
    None,
    Paper,
    Light,
    Middle,
    Ink,
}
