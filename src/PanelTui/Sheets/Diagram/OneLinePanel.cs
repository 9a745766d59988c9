using PanelTui.Engine.Panels;

namespace PanelTui.Sheets.Diagram;

/// <summary>The panel on the one-line diagram: main, bus, and the circuits on the side where they hang on the wall.</summary>
internal sealed class OneLinePanel(Schedule schedule, Sketch sketch)
{
    private const double Pitch = 14;
    private const double Edge = 8;
    private readonly Panel _panel = schedule.Panel;

    /// <summary>Draws from there down.</summary>
    /// <returns>Where the drawing ends.</returns>
    public double Draw(double top, double width)
    {
        var centre = width / 2;
        var bus = top + 58;
        var (left, right) = (SideOf(left: true), SideOf(left: false));
        var rows = Math.Max(1, Math.Max(left.Count, right.Count));
        var end = bus + 10 + (rows * Pitch);
        Head(centre, top, bus);
        sketch.Line(centre, bus, centre, end, 3);
        for (var row = 0; row < left.Count; row++) Branch(left[row], centre, bus + 12 + (row * Pitch), false);
        for (var row = 0; row < right.Count; row++) Branch(right[row], centre, bus + 12 + (row * Pitch), true);
        Bond(end + 14);
        sketch.Box(Edge, top, width - (2 * Edge), end + 34 - top);
        return end + 42;
    }

    private List<Circuit> SideOf(bool left) =>
        [.. schedule.Circuits.Where(circuit => circuit.Space.IsLeft == left).OrderBy(circuit => circuit.Space)];

    private void Head(double centre, double top, double bus)
    {
        sketch.Text(Edge + 8, top + 15, PanelWords.NameOf(_panel), 10, bold: true, room: centre - 50);
        sketch.Text(Edge + 8, top + 27, $"{_panel.System}, {_panel.Spaces} spaces", room: centre - 50);
        sketch.Text(Edge + 8, top + 38, $"bus {PanelWords.Stated(_panel.Bus)}", room: centre - 50);
        if (_panel.Main?.Rating is { } rating)
        {
            sketch.Line(centre, top, centre, top + 14);
            Symbols.BreakerDown(sketch, centre, top + 14);
            sketch.Line(centre, top + 38, centre, bus);
            sketch.Text(centre + 14, top + 30, $"main {rating}");
            return;
        }

        sketch.Line(centre, top, centre, bus);
        sketch.Text(centre + 14, top + 30, _panel.Main is null ? "main not stated" : "main lugs");
    }

    private void Branch(Circuit circuit, double centre, double y, bool toTheRight)
    {
        var way = toTheRight ? 1 : -1;
        Symbols.BreakerAcross(sketch, centre, y, toTheRight, circuit.Breaker.Poles);
        var align = toTheRight ? Align.Left : Align.Right;
        sketch.Text(centre + (way * 38), y + 3, Named(circuit, toTheRight), 8, align: align, room: centre - 38 - Edge - 6);
    }

    private static string Named(Circuit circuit, bool toTheRight)
    {
        var (breaker, number, name) = ($"{circuit.Breaker.Rating}", $"{circuit.Space}", PanelWords.Purpose(circuit));
        return toTheRight ? $"{breaker} · {number} · {name}" : $"{name} · {number} · {breaker}";
    }

    private void Bond(double y)
    {
        sketch.Line(Edge + 14, y, Edge + 44, y, 2);
        sketch.Text(Edge + 29, y - 3, "N", 7, bold: true, align: Align.Middle);
        sketch.Line(Edge + 64, y - 4, Edge + 64, y + 4);
        Symbols.Ground(sketch, Edge + 64, y + 4);
        if (_panel.NeutralBonded != false) sketch.Line(Edge + 44, y, Edge + 64, y, 1, dashed: _panel.NeutralBonded is null);
        sketch.Text(Edge + 82, y + 6, SupplyWords.AtPanel(schedule));
    }
}
