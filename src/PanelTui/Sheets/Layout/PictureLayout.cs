namespace PanelTui.Sheets.Layout;

/// <summary>Puts a drawing on a page: as it is, or smaller where the page is smaller.</summary>
internal static class PictureLayout
{
    public static void Set(PageFlow flow, Drawing drawing)
    {
        var narrow = Math.Min(1, flow.Width / drawing.Width);
        if (drawing.Height * narrow > flow.Room && flow.Room < flow.Whole * 0.7) flow.Need(drawing.Height * narrow);
        var scale = Math.Min(narrow, flow.Room / drawing.Height);
        var (x, y) = (flow.Left, flow.Top);
        foreach (var mark in drawing.Marks) flow.Add(Placed(mark, x, y, scale));
        flow.Skip(drawing.Height * scale);
    }

    private static Mark Placed(Mark mark, double x, double y, double scale)
    {
        return mark switch
        {
            Mark.Stroke stroke => stroke with { Points = [.. stroke.Points.Select(At)], Weight = stroke.Weight * scale },
            Mark.Circle circle => circle with { Centre = At(circle.Centre), Radius = circle.Radius * scale },
            Mark.Letters letters => letters with { At = At(letters.At), Size = letters.Size * scale },
            _ => mark,
        };

        Point At(Point point) => new(x + (point.X * scale), y + (point.Y * scale));
    }
}
