namespace PanelTui.Terminal;

/// <summary>The mode the terminal line was in when the program started, and the raw mode a full screen needs.</summary>
/// <remarks>
/// The structure is kept as opaque bytes: 60 on Linux, 72 on macOS, so 256 holds either. Raw mode also takes
/// Ctrl+S, Ctrl+Q, Ctrl+C and Ctrl+\ from the line, so that they arrive as keys.
/// </remarks>
internal sealed class TtyMode
{
    private const int Keyboard = 0;
    private const int AtOnce = 0;

    private readonly byte[] _saved = new byte[256];
    private readonly bool _known;

    public TtyMode() => _known = Libc.GetMode(Keyboard, _saved) == 0;

    public void EnterRaw()
    {
        if (!_known)
            return;
        Span<byte> raw = stackalloc byte[256];
        _saved.CopyTo(raw);
        Libc.MakeRaw(raw);
        _ = Libc.SetMode(Keyboard, AtOnce, raw);
    }

    /// <summary>Throws away what was typed but not read, such as the tail of a mouse report, and gives the line back.</summary>
    public void Restore()
    {
        if (!_known)
            return;
        _ = Libc.Discard(Keyboard, OperatingSystem.IsMacOS() ? 1 : 0);
        _ = Libc.SetMode(Keyboard, AtOnce, _saved);
    }
}
