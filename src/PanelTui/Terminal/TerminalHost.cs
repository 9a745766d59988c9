using Terminal.Gui.App;
using Terminal.Gui.Views;

namespace PanelTui.Terminal;

/// <summary>The one door to the full screen: takes the terminal, runs the window, and gives the terminal back, whatever happens.</summary>
public static class TerminalHost
{
    private const int NoTerminal = 2;

    /// <summary>Shows the window until it is closed, or something else ends it.</summary>
    /// <param name="build">Makes the main window.</param>
    /// <param name="onEnding">Keeps the user's work; called once, first of all, also when the line is already gone.</param>
    /// <param name="options">What the command line said about the terminal.</param>
    /// <returns>The exit code: 0, 2 without a terminal, 70 for a fault in the program, 128 + n for signal n.</returns>
    public static int Run(
        Func<IApplication, Runnable> build, Action<Ending>? onEnding = null, TerminalOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(build);
        if (OperatingSystem.IsWindows() || TerminalCheck.WhyNot() is not null)
        {
            Parting.Say($"paneltui: {TerminalCheck.WhyNot()}");
            return NoTerminal;
        }

        if (Provision.WhyNot() is { } missing)
        {
            Parting.Say(missing);
            return NoTerminal;
        }

        LibraryStart.LookLikeAPipe();
        using var screen = new FullScreen(options ?? new TerminalOptions(), onEnding);
        return screen.Run(build);
    }

    /// <summary>Erases the terminal and paints everything anew, for when something else has written on it.</summary>
    public static void Repaint(IApplication app)
    {
        ArgumentNullException.ThrowIfNull(app);
        (app.Driver?.GetOutput() as DiffOutput)?.Repaint();
    }

    /// <summary>Gives the terminal back, stops the job as a shell's own Ctrl+Z does, and paints everything once it goes on.</summary>
    public static void Suspend(IApplication app)
    {
        ArgumentNullException.ThrowIfNull(app);
        (app.Driver?.GetOutput() as DiffOutput)?.Suspend();
    }

    /// <summary>Paints what has changed and sends it, in the middle of a turn: for what must be seen before long work goes on.</summary>
    public static void ShowNow(IApplication app)
    {
        ArgumentNullException.ThrowIfNull(app);
        if (app.Driver?.GetOutput() is not DiffOutput output) return;
        app.LayoutAndDraw();
        output.Write(app.Driver.GetOutputBuffer());
        output.Flush();
    }
}
