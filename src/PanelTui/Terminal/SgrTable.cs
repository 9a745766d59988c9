using System.Globalization;
using System.Text;
using PanelTui.Engine;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace PanelTui.Terminal;

/// <summary>The escape sequence that switches to an attribute, in the colours this terminal is sent.</summary>
/// <remarks>
/// A colour of the sixteen goes out as its palette number at every depth: the user's own theme decides how it looks,
/// on a light ground and on a dark one.
/// </remarks>
internal sealed class SgrTable(ColourDepth depth)
{
    public const string Plain = "\e[m";

    private static readonly (TextStyle Style, string Code)[] Styles =
    [
        (TextStyle.Bold, ";1"), (TextStyle.Faint, ";2"), (TextStyle.Italic, ";3"), (TextStyle.Underline, ";4"),
        (TextStyle.Blink, ";5"), (TextStyle.Reverse, ";7"), (TextStyle.Strikethrough, ";9"),
    ];

    private readonly Dictionary<Attribute, string> _known = [];

    public string For(Attribute attribute)
    {
        if (!_known.TryGetValue(attribute, out var sequence))
            _known[attribute] = sequence = Build(attribute);
        return sequence;
    }

    private string Build(Attribute attribute)
    {
        var codes = new StringBuilder();
        foreach (var (style, code) in Styles)
        {
            if (attribute.Style.HasFlag(style))
                codes.Append(code);
        }

        codes.Append(Colour(attribute.Foreground, 30)).Append(Colour(attribute.Background, 40));
        return codes.Length == 0 ? Plain : string.Intern($"\e[0{codes}m");
    }

    /// <param name="colour">The colour; a transparent one is the terminal's own.</param>
    /// <param name="ground">30 for the letters, 40 for what lies behind them.</param>
    private string Colour(Color colour, int ground)
    {
        if (colour.A == 0)
            return "";
        var nearest = (int)colour.GetAnsiColorCode() - 30 + ground;
        var isNamed = new Color(colour.GetClosestNamedColor16()) == colour;
        return depth switch
        {
            ColourDepth.None => "",
            ColourDepth.Sixteen => Code($";{nearest}"),
            ColourDepth.Cube or ColourDepth.Full when isNamed => Code($";{nearest}"),
            ColourDepth.Cube => Code($";{ground + 8};5;{ColourCube.Nearest(colour.R, colour.G, colour.B)}"),
            ColourDepth.Full => Code($";{ground + 8};2;{colour.R};{colour.G};{colour.B}"),
            _ => throw Unnamed.Of(depth),
        };
    }

    private static string Code(FormattableString code) => code.ToString(CultureInfo.InvariantCulture);
}
