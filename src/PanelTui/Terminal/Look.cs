using System.Collections.Immutable;
using Terminal.Gui.Configuration;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace PanelTui.Terminal;

/// <summary>How each role looks: letters in the terminal's own colours, on its own ground, light or dark.</summary>
/// <remarks>
/// No meaning rests on colour: the cursor is reversed, what can be chosen is underlined, what matters is bold, and a
/// finding has a letter. Colour, of the sixteen that the user's theme defines, repeats what is there already.
/// </remarks>
public static class Look
{
    private static readonly Lock Gate = new();
    private static bool _installed;

    /// <summary>The names that <see cref="Choose"/> knows, the usual one first.</summary>
    public static readonly ImmutableArray<string> Names = ["standard", "contrast", "plain"];

    private static string _name = Names[0];

    public static Attribute Plain { get; } = Of();

    /// <summary>Under the cursor, or in the focus.</summary>
    public static Attribute Cursor { get; } = Of(TextStyle.Reverse);

    /// <summary>Headings, and the figure that matters.</summary>
    public static Attribute Strong { get; } = Of(TextStyle.Bold);

    /// <summary>A key that does something, or a mark on a letter.</summary>
    public static Attribute Mark { get; } = Of(TextStyle.Underline);

    /// <summary>What cannot be used now, or says nothing new; as strong as the rest where contrast was asked for.</summary>
    public static Attribute Faint => _name == "contrast" ? Plain : Of(TextStyle.Faint);

    /// <summary>An error; its row begins with a word or a letter that says so.</summary>
    public static Attribute Error => ErrorIn(_name);

    internal static Attribute ErrorIn(string look) => look switch
    {
        "plain" => Of(TextStyle.Bold | TextStyle.Underline),
        "contrast" => Of(TextStyle.Bold | TextStyle.Underline, ColorName16.BrightYellow),
        _ => Of(TextStyle.Bold, ColorName16.Red),
    };

    /// <summary>A warning; its row begins with a word or a letter that says so.</summary>
    public static Attribute Warning => WarningIn(_name);

    internal static Attribute WarningIn(string look) => look switch
    {
        "plain" => Of(TextStyle.Bold),
        "contrast" => Of(TextStyle.Bold, ColorName16.BrightYellow),
        _ => Of(TextStyle.Bold, ColorName16.Yellow),
    };

    /// <summary>
    /// `standard`: sixteen colours of the user's own theme; `contrast`: bright ones that the colour-blind tell apart, and
    /// nothing faint; `plain`: no colour at all. Chosen before the first view is made.
    /// </summary>
    public static void Choose(string name) => _name = name;

    /// <summary>The colour of a leg, which only repeats the leg's letter: A, B, C or any other.</summary>
    public static Attribute Leg(char letter) => LegIn(_name, letter);

    internal static Attribute LegIn(string look, char letter) => (look, letter) switch
    {
        ("plain", _) => Plain,
        ("contrast", 'A') => Of(TextStyle.Bold, ColorName16.BrightCyan),
        ("contrast", 'B') => Of(TextStyle.Bold, ColorName16.BrightYellow),
        ("contrast", 'C') => Strong,
        (_, 'A') => Of(TextStyle.None, ColorName16.Cyan),
        (_, 'B') => Of(TextStyle.None, ColorName16.Magenta),
        (_, 'C') => Of(TextStyle.None, ColorName16.Green),
        _ => Plain,
    };

    /// <summary>The same look under the cursor: reversed, and nothing else changed.</summary>
    public static Attribute UnderCursor(Attribute look) => look with { Style = look.Style | TextStyle.Reverse };

    /// <summary>Gives the library's named schemes this look; done once, before any view is made.</summary>
    internal static void Install()
    {
        lock (Gate)
        {
            if (_installed)
                return;
            _installed = true;
            foreach (var name in (string[])["Base", "Accent", "Dialog", "Menu"])
                SchemeManager.AddScheme(name, For(Plain));
            SchemeManager.AddScheme("Error", For(Error));
        }
    }

    private static Attribute Of(TextStyle style = TextStyle.None) => new(Color.None, Color.None, style);

    private static Attribute Of(TextStyle style, Color letters) => new(letters, Color.None, style);

    /// <summary>Every role by name: one that is left out is derived by the library, in colours of its own.</summary>
    private static Scheme For(Attribute normal) => new(normal)
    {
        Normal = normal,
        HotNormal = Mark,
        Focus = UnderCursor(normal),
        HotFocus = UnderCursor(Mark),
        Active = Strong,
        HotActive = Of(TextStyle.Bold | TextStyle.Underline),
        Highlight = Strong,
        Disabled = Faint,
        Editable = Mark,
        ReadOnly = normal,
        Code = normal,
        CodeComment = normal,
        CodeKeyword = normal,
        CodeString = normal,
        CodeNumber = normal,
        CodeOperator = normal,
        CodeType = normal,
        CodePreprocessor = normal,
        CodeIdentifier = normal,
        CodeConstant = normal,
        CodePunctuation = normal,
        CodeFunctionName = normal,
        CodeAttribute = normal,
    };
}
