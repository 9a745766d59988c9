using System.Collections.Immutable;
using Terminal.Gui.App;

namespace PanelTui.Screens;

/// <summary>Sends lines to the clipboard of whoever sits at the terminal, and says so.</summary>
internal static class Clipboard
{
    public static void Send(IApplication? app, Session session, ImmutableArray<string> lines)
    {
        var sent = app?.Driver?.Clipboard?.TrySetClipboardData(string.Join('\n', lines)) ?? false;
        session.Say(sent
            ? $"Sent to the terminal's clipboard: {lines[0].Replace('\t', ' ')}{(lines.Length > 1 ? " …" : "")}"
            : "This terminal has no clipboard");
    }
}
