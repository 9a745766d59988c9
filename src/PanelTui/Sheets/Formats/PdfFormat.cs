using System.Diagnostics;
using PanelTui.Engine;
using PanelTui.Presentation;
using PanelTui.Sheets.Layout;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace PanelTui.Sheets.Formats;

/// <summary>A sheet as PDF, its letters embedded.</summary>
internal static class PdfFormat
{
    private static readonly Lock OneAtATime = new();

    /// <summary>The library shares its fonts between documents and is no friend of threads: one document at a time.</summary>
    public static byte[] Of(Sheet sheet, Paper paper)
    {
        var pages = PageLayout.Of(sheet, paper);
        lock (OneAtATime)
        {
            using var document = new PdfDocument();
            document.Info.Title = DisplayText.Clean(sheet.Title);
            foreach (var page in pages) Draw(document, page);
            using var bytes = new MemoryStream();
            document.Save(bytes, closeStream: false);
            return PdfStamps.Fixed(bytes.ToArray());
        }
    }

    private static void Draw(PdfDocument document, Drawing drawing)
    {
        var page = document.AddPage();
        page.Width = XUnit.FromPoint(drawing.Width);
        page.Height = XUnit.FromPoint(drawing.Height);
        using var graphics = XGraphics.FromPdfPage(page);
        foreach (var mark in drawing.Marks) Draw(graphics, mark);
    }

    private static void Draw(XGraphics graphics, Mark mark)
    {
        switch (mark)
        {
            case Mark.Stroke stroke when stroke.Fill == Shade.None:
                graphics.DrawLines(PenOf(stroke), Points(stroke));
                break;
            case Mark.Stroke stroke:
                graphics.DrawPolygon(PenOf(stroke), BrushOf(stroke.Fill), Points(stroke), XFillMode.Winding);
                break;
            case Mark.Circle circle:
                var box = new XRect(circle.Centre.X - circle.Radius, circle.Centre.Y - circle.Radius, 2 * circle.Radius, 2 * circle.Radius);
                if (circle.Fill == Shade.None) graphics.DrawEllipse(XPens.Black, box);
                else graphics.DrawEllipse(XPens.Black, BrushOf(circle.Fill), box);
                break;
            case Mark.Letters letters:
                Draw(graphics, letters);
                break;
            default:
                throw new UnreachableException($"A {mark.GetType().Name} is not drawn.");
        }
    }

    private static void Draw(XGraphics graphics, Mark.Letters letters)
    {
        var text = Typeface.Settable(letters.Text);
        var width = Typeface.Width(text, letters.Size, letters.Bold);
        var x = letters.Align switch { Align.Right => letters.At.X - width, Align.Middle => letters.At.X - (width / 2), Align.Left => letters.At.X, _ => throw Unnamed.Of(letters.Align) };
        graphics.DrawString(text, SheetFonts.Of(letters.Size, letters.Bold), XBrushes.Black, new XPoint(x, letters.At.Y));
    }

    private static XPoint[] Points(Mark.Stroke stroke) => [.. stroke.Points.Select(point => new XPoint(point.X, point.Y))];

    private static XPen PenOf(Mark.Stroke stroke)
    {
        var pen = new XPen(XColors.Black, stroke.Weight);
        if (stroke.Dashed) pen.DashPattern = [3 / stroke.Weight, 2 / stroke.Weight];
        return pen;
    }

    private static XSolidBrush BrushOf(Shade shade) => shade switch
    {
        Shade.Paper => XBrushes.White,
        Shade.Light => XBrushes.Gainsboro,
        Shade.Middle => XBrushes.DarkGray,
        Shade.Ink => XBrushes.Black,
        Shade.None => throw new ArgumentException("A shape without a fill has no brush."),
        _ => throw Unnamed.Of(shade),
    };
}
