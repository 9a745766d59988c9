using System.Text;

namespace PanelTui.Terminal;

/// <summary>The modes this program switches on, and their opposites; nothing is ever asked of the terminal.</summary>
internal static class TerminalModes
{
    /// <summary>Clicks, drags and the wheel, with coordinates as digits; not every movement of the mouse.</summary>
    public const string MouseOn = "\e[?1002h\e[?1006h";

    /// <summary>Alternate screen, cleared; digits on the keypad; pasted text marked as such; no cursor.</summary>
    private const string Enter = "\e[?1049h\e>\e[?1l\e[?2004h\e[?25l";

    /// <summary>
    /// Ends a string or frame that was cut short, then everything this program, or one before it, may have left on:
    /// held frames, paste marks, every kind of mouse report, colours, the alternate screen,
    /// cursor and keypad modes; and the cursor is shown.
    /// </summary>
    private const string LeaveAll =
        "\e\\\e[?2026l\e[?2004l\e[?1003l\e[?1002l\e[?1006l\e[0m\e[?1049l\e[?1l\e>\e[?25h";

    public static byte[] Leave { get; } = Encoding.ASCII.GetBytes(LeaveAll);

    public static string EnterWith(bool mouse) => mouse ? Enter + MouseOn : Enter;
}
