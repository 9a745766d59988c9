using System.Diagnostics;

namespace PanelTui.Tests.Saving;

/// <summary>A program that was run to its end, with what it wrote.</summary>
internal sealed record Finished(string Out, string Error, int Code)
{
    public static Finished Of(string program, params string[] arguments)
    {
        using var run = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        var trouble = run.StandardError.ReadToEndAsync();
        var said = run.StandardOutput.ReadToEnd();
        run.WaitForExit();
        return new(said, trouble.GetAwaiter().GetResult(), run.ExitCode);
    }
}
