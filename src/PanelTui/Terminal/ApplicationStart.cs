using Terminal.Gui.App;

namespace PanelTui.Terminal;

/// <summary>What every application gets before its window is made, on the real terminal and in a test alike.</summary>
internal static class ApplicationStart
{
    public static void Prepare(IApplication app, DiffOutput output)
    {
        Look.Install();
        app.Driver!.Clipboard = new Osc52Clipboard(output.Send);
    }
}
