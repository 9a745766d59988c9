using System.Diagnostics;
using PanelTui.CommandLine;

namespace PanelTui.Tests.Git;

/// <summary>A throw-away repository set up by `git-setup`, in which git calls this program as its merge driver.</summary>
internal sealed class Repository : IDisposable
{
    public const string Name = "shed.panel.yaml";

    private readonly TempFolder _folder = new();
    private readonly string _name;

    /// <param name="schedule">Its text in the first commit.</param>
    /// <param name="name">The file's name.</param>
    /// <param name="program">A script in place of the program on the path.</param>
    public Repository(string schedule, string name = Name, string? program = null)
    {
        _name = name;
        var here = AppContext.BaseDirectory;
        Real = Executable("real", $"#!/bin/sh\nexec dotnet exec --runtimeconfig '{here}PanelTui.Tests.runtimeconfig.json' --depsfile '{here}PanelTui.Tests.deps.json' '{here}paneltui.dll' \"$@\"\n");
        Top = Directory.CreateDirectory(_folder.File("top")).FullName;
        Must("git", "init", "-q", "-b", "main");
        Must("git", "config", "user.name", "Test");
        Must("git", "config", "user.email", "test@example.org");
        if (program is null) Executable("bin", $"#!/bin/sh\nexec '{Real}' \"$@\"\n");
        else if (program.Length > 0) Executable("bin", program);
        if (program is null) Must("paneltui", "git-setup");
        else SetUpFor("/nowhere/paneltui");
        Commit(schedule, "base");
    }

    public string Top { get; }

    /// <summary>The program, by a path that no test puts a script in place of.</summary>
    public string Real { get; }

    /// <summary>As `git-setup` of a copy of the program at this place does.</summary>
    public void SetUpFor(string copy)
    {
        var word = GitSettings.Quoted(copy);
        foreach (var (key, value) in GitSettings.Of(word, word)) Must("git", "config", key, value);
        File.WriteAllText(Path.Combine(Top, ".gitattributes"), $"{GitSettings.Attributes}\n");
    }

    public string Executable(string folder, string text)
    {
        var program = Path.Combine(Directory.CreateDirectory(_folder.File(folder)).FullName, "paneltui");
        File.WriteAllText(program, text);
        if (!OperatingSystem.IsWindows()) File.SetUnixFileMode(program, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        return program;
    }

    /// <summary>A path beside the work tree.</summary>
    public string Beside(string name) => _folder.File(name);

    public string Schedule
    {
        get => File.ReadAllText(Path.Combine(Top, _name));
        set => File.WriteAllText(Path.Combine(Top, _name), value);
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
            WorkingDirectory = Top, RedirectStandardOutput = true, RedirectStandardError = true,
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
