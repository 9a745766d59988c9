namespace PanelTui.Terminal;

/// <summary>The keys that begin with ESC O: function keys, and the keypad where a program left it in application mode.</summary>
internal static class SingleShift
{
    /// <param name="modifier">Digits before the letter; old terminals put the modifier there.</param>
    /// <param name="letter">The letter that says which key it is.</param>
    public static string Translate(string modifier, char letter) => letter switch
    {
        _ when modifier.Length > 0 => ControlSequence.Translate($"\e[1;{modifier}{letter}"),
        (>= 'A' and <= 'D') or 'F' or 'H' => $"\e[{letter}",
        >= 'P' and <= 'S' => $"\eO{letter}",
        >= 'a' and <= 'd' => $"\e[1;5{char.ToUpperInvariant(letter)}",
        'M' => "\r",
        'I' => "\t",
        ' ' => " ",
        'X' => "=",
        >= 'j' and <= 'y' => ((char)(letter - 'j' + '*')).ToString(), // * + , - . / 0 to 9
        _ => "",
    };
}
