using Terminal.Gui.App;
using Terminal.Gui.Input;
using Terminal.Gui.Views;

namespace PanelTui.Terminal;

/// <summary>What every application gets, on the real terminal and in a test alike.</summary>
internal static class ApplicationStart
{
    /// <summary>Makes the main window, once what it may rely on is there.</summary>
    public static Runnable Open(IApplication app, DiffOutput output, Func<IApplication, Runnable> build)
    {
        Look.Install();
        app.Driver!.Clipboard = new Osc52Clipboard(output.Send);
        var window = build(app);
        window.KeyDownNotHandled += (_, key) => key.Handled |= key == Key.Esc; // which would end the program
        return window;
    }
}
