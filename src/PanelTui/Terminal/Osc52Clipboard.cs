using System.Text;
using Terminal.Gui.App;

namespace PanelTui.Terminal;

/// <summary>Copies within the program, and to the user's own clipboard by way of the terminal, also over SSH (OSC 52).</summary>
/// <remarks>Pasting from outside comes from the terminal as pasted text; the terminal's clipboard is never read.</remarks>
internal sealed class Osc52Clipboard(Action<string> send) : ClipboardBase
{
    /// <summary>Terminals and multiplexers drop what is longer: xterm's own limit is 100 000 bytes of base64.</summary>
    private const int MostLetters = 50_000;

    private string _text = "";

    public override bool IsSupported => true;

    protected override string GetClipboardDataImpl() => _text;

    protected override void SetClipboardDataImpl(string text)
    {
        _text = text;
        if (text.Length <= MostLetters)
            send($"\e]52;c;{Convert.ToBase64String(Encoding.UTF8.GetBytes(text))}\a");
    }
}
