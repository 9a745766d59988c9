using System.Diagnostics;

namespace PanelTui.Tests.Git;

/// <summary>A throw-away repository set up by `git-setup`, in which git calls this program as its merge driver.</summary>
internal sealed class Repository : IDisposable
{
    public const string Name = "shed.panel.yaml";

    private readonly TempFolder _folder = new();
    private readonly string _top;

    public Repository(string schedule)
    {
        var bin = Directory.CreateDirectory(_folder.File("bin")).FullName;
        var program = Path.Combine(bin, "paneltui");
        var here = AppContext.BaseDirectory;
        File.WriteAllText(program, $"#!/bin/sh\nexec dotnet exec --runtimeconfig '{here}PanelTui.Tests.runtimeconfig.json' --depsfile '{here}PanelTui.Tests.deps.json' '{here}paneltui.dll' \"$@\"\n");
        if (!OperatingSystem.IsWindows()) File.SetUnixFileMode(program, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        _top = Directory.CreateDirectory(_folder.File("top")).FullName;
        Must("git", "init", "-q", "-b", "main");
        Must("git", "config", "user.name", "Test");
        Must("git", "config", "user.email", "test@example.org");
        Must("paneltui", "git-setup");
        Commit(schedule, "base");
    }

    public string Schedule
    {
        get => File.ReadAllText(Path.Combine(_top, Name));
        set => File.WriteAllText(Path.Combine(_top, Name), value);
    }

    public void Commit(string schedule, string message)
    {
        Schedule = schedule;
        Must("git", "add", "-A");
        Must("git", "commit", "-q", "-m", message);
    }

    public void Must(string command, params string[] arguments)
    {
        var (code, said) = Run(command, arguments);
        code.ShouldBe(0, $"{command} {string.Join(' ', arguments)}: {said}");
    }

    public (int Code, string Said) Run(string command, params string[] arguments)
    {
        var start = new ProcessStartInfo("/usr/bin/env")
        {
            WorkingDirectory = _top, RedirectStandardOutput = true, RedirectStandardError = true,
        };
        start.Environment["PATH"] = $"{_folder.File("bin")}:{Environment.GetEnvironmentVariable("PATH")}";
        start.ArgumentList.Add(command);
        foreach (var argument in arguments) start.ArgumentList.Add(argument);
        using var process = Process.Start(start)!;
        var error = process.StandardError.ReadToEndAsync();
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, said + error.GetAwaiter().GetResult());
    }

    public void Dispose() => _folder.Dispose();
}
