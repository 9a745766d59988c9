using System.Globalization;
using System.Net;
using PanelTui.Presentation;

namespace PanelTui.Sheets.Formats;

/// <summary>Text of a file for XML and HTML: no markup, no character that XML refuses.</summary>
internal static class XmlText
{
    public static string Of(string text) => WebUtility.HtmlEncode(DisplayText.Clean(text));

    /// <summary>A coordinate, to a hundredth.</summary>
    public static string Of(double value) => ((decimal)Math.Round(value, 2)).ToString("0.##", CultureInfo.InvariantCulture);
}
