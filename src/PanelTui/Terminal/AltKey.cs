using System.Text;

namespace PanelTui.Terminal;

/// <summary>A key struck with Alt, which terminals send as ESC and the key; in the form ESC [ code ; modifiers u.</summary>
internal static class AltKey
{
    private const int Alt = 3;
    private const int AltShift = 4;
    private const int AltControl = 7;

    public static string Of(Rune key) => key.Value switch
    {
        '\t' or '\r' or 0x7f => Code(key.Value, Alt),
        '\b' => Code(0x7f, Alt),
        >= 1 and <= 26 => Code(key.Value + 'a' - 1, AltControl),
        < ' ' or (>= 0x80 and <= 0x9f) => "",
        >= 'A' and <= 'Z' => Code(key.Value + 'a' - 'A', AltShift),
        _ => Code(key.Value, Alt),
    };

    private static string Code(int key, int modifiers) => $"\e[{key};{modifiers}u";
}
