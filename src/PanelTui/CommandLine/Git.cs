using System.ComponentModel;
using System.Diagnostics;

namespace PanelTui.CommandLine;

/// <summary>What a git command printed and how it ended; 127 where there is no git.</summary>
internal sealed record GitAnswer(int Code, byte[] Out, string Error)
{
    public bool Succeeded => Code == 0;

    public string Text => System.Text.Encoding.UTF8.GetString(Out).TrimEnd('\n');
}

/// <summary>The git that is installed, run without a terminal.</summary>
internal static class Git
{
    private const int NotFound = 127;

    public static GitAnswer Run(string folder, params string[] arguments)
    {
        var start = new ProcessStartInfo("git")
        {
            WorkingDirectory = folder, RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true,
        };
        foreach (var argument in arguments) start.ArgumentList.Add(argument);
        try
        {
            using var git = Process.Start(start)!;
            git.StandardInput.Close();
            var error = git.StandardError.ReadToEndAsync();
            using var output = new MemoryStream();
            git.StandardOutput.BaseStream.CopyTo(output);
            git.WaitForExit();
            return new GitAnswer(git.ExitCode, output.ToArray(), error.GetAwaiter().GetResult().Trim());
        }
        catch (Win32Exception)
        {
            return new GitAnswer(NotFound, [], "git is not installed");
        }
    }

    /// <summary>A file as a revision has it.</summary>
    public static GitAnswer Show(string revision, string file)
    {
        var path = Path.GetFullPath(file);
        return Run(Path.GetDirectoryName(path)!, "show", "--end-of-options", $"{revision}:./{Path.GetFileName(path)}");
    }
}
