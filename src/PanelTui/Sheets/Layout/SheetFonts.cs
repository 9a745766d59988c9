using System.Collections.Frozen;
using System.Text;
using PdfSharp.Drawing;
using PdfSharp.Fonts;

namespace PanelTui.Sheets.Layout;

/// <summary>Hands the two fonts inside this program to the PDF library: no font of the machine is ever used.</summary>
internal sealed class SheetFonts : IFontResolver
{
    public const string Family = "DejaVu Sans Condensed";

    private const string Regular = "DejaVuSansCondensed.ttf";
    private const string Bold = "DejaVuSansCondensed-Bold.ttf";

    private SheetFonts()
    {
    }

    /// <summary>Before any font is made; again and again does no harm.</summary>
    public static void Use() => GlobalFontSettings.FontResolver ??= new SheetFonts();

    public static XFont Of(double size, bool bold) =>
        new(Family, size, bold ? XFontStyleEx.Bold : XFontStyleEx.Regular, XPdfFontOptions.UnicodeDefault);

    /// <summary>Those that both fonts have a shape for.</summary>
    public static FrozenSet<Rune> Characters() =>
        FontCoverage.Of(BytesOf(Regular)).Intersect(FontCoverage.Of(BytesOf(Bold))).ToFrozenSet();

    public FontResolverInfo ResolveTypeface(string familyName, bool isBold, bool isItalic) => new(isBold ? Bold : Regular);

    public byte[] GetFont(string faceName) => BytesOf(faceName);

    private static byte[] BytesOf(string faceName)
    {
        using var font = typeof(SheetFonts).Assembly.GetManifestResourceStream(faceName)
            ?? throw new InvalidOperationException($"The program lacks its font {faceName}.");
        using var bytes = new MemoryStream();
        font.CopyTo(bytes);
        return bytes.ToArray();
    }
}
