namespace PanelTui.Sheets.Diagram;

/// <summary>Symbols after IEEE 315 and IEC 60617, from memory; each has its leads at the ends that its name tells.</summary>
internal static class Symbols
{
    /// <summary>A circuit breaker on a line downwards, from y to y + 24: two ends and a bow between them.</summary>
    public static void BreakerDown(Sketch sketch, double x, double y)
    {
        sketch.Line(x, y, x, y + 6);
        sketch.Arc(x - 2, y + 12, 7, -60, 60);
        sketch.Circle(x, y + 6, 1.2, Shade.Ink);
        sketch.Circle(x, y + 18, 1.2, Shade.Ink);
        sketch.Line(x, y + 18, x, y + 24);
    }

    /// <summary>A circuit breaker across, from x to x + 24 or back, with a stroke for each pole.</summary>
    public static void BreakerAcross(Sketch sketch, double x, double y, bool toTheRight, int poles)
    {
        var way = toTheRight ? 1 : -1;
        sketch.Line(x, y, x + (way * 6), y);
        sketch.Arc(x + (way * 12), y + 1.5, 6.5, 200, 340);
        sketch.Circle(x + (way * 6), y, 1, Shade.Ink);
        sketch.Circle(x + (way * 18), y, 1, Shade.Ink);
        sketch.Line(x + (way * 18), y, x + (way * 34), y);
        for (var pole = 0; pole < poles && poles > 1; pole++)
            sketch.Line(x + (way * 25) + (pole * way * 3) - 1, y + 3, x + (way * 25) + (pole * way * 3) + 1.5, y - 3, 0.8);
    }

    /// <summary>A supply of alternating current: a circle with a wave, its lead at the foot.</summary>
    public static void Supply(Sketch sketch, double x, double y, string letter)
    {
        sketch.Circle(x, y, 15, Shade.Paper);
        if (letter.Length > 0) sketch.Text(x, y + 1, letter, 11, bold: true, align: Align.Middle);
        Wave(sketch, x, letter.Length > 0 ? y + 8 : y, 6);
    }

    /// <summary>Direct current in, alternating current out: a square with a diagonal.</summary>
    public static void Inverter(Sketch sketch, double x, double y)
    {
        sketch.Box(x - 15, y - 15, 30, 30, Shade.Paper);
        sketch.Line(x - 15, y + 15, x + 15, y - 15);
        sketch.Line(x - 11, y - 9, x - 2, y - 9);
        sketch.Line(x - 11, y - 6, x - 2, y - 6, dashed: true);
        Wave(sketch, x + 7, y + 8, 4);
    }

    /// <summary>A battery to the right of x, two cells; its lead on the left.</summary>
    public static void Battery(Sketch sketch, double x, double y)
    {
        sketch.Line(x, y, x + 8, y);
        for (var cell = 0; cell < 2; cell++)
        {
            sketch.Line(x + 8 + (cell * 8), y - 9, x + 8 + (cell * 8), y + 9);
            sketch.Line(x + 12 + (cell * 8), y - 4, x + 12 + (cell * 8), y + 4, 2);
        }
    }

    /// <summary>Plug and socket on a line downwards, from y to y + 20.</summary>
    public static void Inlet(Sketch sketch, double x, double y)
    {
        sketch.Line(x, y, x, y + 6);
        sketch.Arc(x, y + 13, 7, 180, 360);
        sketch.Box(x - 1.5, y + 9, 3, 7, Shade.Ink);
        sketch.Line(x, y + 16, x, y + 20);
    }

    /// <summary>Ground: three bars, each shorter, under its lead.</summary>
    public static void Ground(Sketch sketch, double x, double y)
    {
        sketch.Line(x - 8, y, x + 8, y);
        sketch.Line(x - 5, y + 3, x + 5, y + 3);
        sketch.Line(x - 2, y + 6, x + 2, y + 6);
    }

    /// <summary>A two-way contact: ends at x - reach and x + reach, the common one below; the blade lies on the left.</summary>
    public static void ChangeOver(Sketch sketch, double x, double y, double reach, double height)
    {
        sketch.Circle(x - reach, y, 1.8, Shade.Paper);
        sketch.Circle(x + reach, y, 1.8, Shade.Paper);
        sketch.Circle(x, y + height, 1.8, Shade.Ink);
        sketch.Line(x, y + height, x - reach + 1, y + 2, 1.6);
    }

    private static void Wave(Sketch sketch, double x, double y, double half)
    {
        sketch.Arc(x - (half / 2), y, half / 2, 180, 360);
        sketch.Arc(x + (half / 2), y, half / 2, 180, 0);
    }
}
