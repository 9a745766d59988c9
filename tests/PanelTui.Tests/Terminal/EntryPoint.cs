using System.Globalization;
using PanelTui.Terminal;
using PanelTui.Tests.Saving;
using Xunit.Runner.InProc.SystemConsole;

namespace PanelTui.Tests.Terminal;

/// <summary>Runs the tests; or, when a test asks for it on a terminal of its own, a small program on the terminal host.</summary>
internal static class EntryPoint
{
    public const string ProbeArgument = "--probe";

    public static bool IsProbe => Environment.GetCommandLineArgs().Contains(ProbeArgument);

    private static int Main(string[] args) => args switch
    {
        [ProbeArgument, var kept, .. var options] => Probe(kept, options),
        [CommandLines.Argument, var file] => CommandLines.Run(file),
        [SaveLoop.Argument, var file, var times] => SaveLoop.Run(file, int.Parse(times, CultureInfo.InvariantCulture)),
        [SavedEdit.Argument, var file] => SavedEdit.Run(file),
        _ => ConsoleRunner.Run(args).GetAwaiter().GetResult(),
    };

    /// <param name="kept">The file where the probe writes how it ended, as an editor keeps its work.</param>
    /// <param name="options">--ascii, --no-mouse; --stuck hangs while it keeps the work.</param>
    private static int Probe(string kept, string[] options) => TerminalHost.Run(
        _ => new Notebook(),
        ending =>
        {
            File.AppendAllText(kept, $"{ending.Cause}\n");
            if (options.Contains("--stuck"))
                Thread.Sleep(Timeout.Infinite);
            ending.Note = ending.Cause == EndingCause.Crash ? $"Your work is in {kept}." : null;
        },
        new TerminalOptions(Ascii: options.Contains("--ascii"), Mouse: !options.Contains("--no-mouse")));
}
