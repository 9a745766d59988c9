using System.Diagnostics;

namespace PanelTui.Tests.Outside;

/// <summary>A repository with a schedule, and with everything that git and a shell would run set to a script that leaves a trace.</summary>
internal sealed class HostileRepository : IDisposable
{
    public const string Schedule = "shed.panel.yaml";
    public const string Branch = "orchard";

    private const UnixFileMode Executable = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;

    private static readonly string[] Programs =
    [
        "bash", "sh", "git", "which", "xclip", "xsel", "wl-copy", "wl-paste", "env", "cat", "vim", "vi", "less", "ssh", "stty",
        "dotnet", "paneltui", "pwsh.exe", "powershell.exe", "git-cat-file", "git-rev-parse", "evil",
    ];

    private static readonly string[] Hooks = ["post-index-change", "reference-transaction", "post-checkout", "fsmonitor-watchman", "query-watchman"];

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("paneltui-");

    public HostileRepository()
    {
        File.WriteAllText(PathOf(Schedule), Shed.Text);
        File.WriteAllText(PathOf(".gitattributes"), "*.yaml diff=evil filter=evil merge=evil\n");
        Git("init", "-q", "-b", Branch);
        Git("-c", "user.name=Test", "-c", "user.email=test@example.org", "-c", "core.attributesFile=/dev/null", "add", "-A");
        Git("-c", "user.name=Test", "-c", "user.email=test@example.org", "commit", "-q", "-m", "base");
        File.AppendAllText(PathOf(Schedule), "# changed\n");
        foreach (var folder in (string[])["", "relative"]) Plant(folder, Programs);
        Plant(".git/hooks", Hooks);
        Configure(PathOf(".git/config"), PathOf("evil"));
        Directory.CreateDirectory(PathOf(".tui"));
        File.WriteAllText(PathOf(".tui/config.json"), "{ this is no JSON");
    }

    public string Folder => _folder.FullName;

    /// <summary>What ran; empty is what every test here wants.</summary>
    public string Ran => File.Exists(PathOf("ran")) ? File.ReadAllText(PathOf("ran")) : "";

    public string PathOf(string name) => Path.Combine(Folder, name);

    public void Forget() => File.Delete(PathOf("ran"));

    /// <summary>Git as a person runs it, with all that the repository configures.</summary>
    public string Git(params string[] arguments)
    {
        var start = new ProcessStartInfo("/usr/bin/git", arguments) { WorkingDirectory = Folder, RedirectStandardOutput = true, RedirectStandardError = true };
        using var git = Process.Start(start)!;
        var error = git.StandardError.ReadToEndAsync();
        var said = git.StandardOutput.ReadToEnd();
        git.WaitForExit();
        return said + error.GetAwaiter().GetResult();
    }

    /// <summary>Everything that a configuration can name a program for, in a file of its own that is included.</summary>
    public static void Configure(string config, string script)
    {
        var included = $"{config}.more";
        File.AppendAllText(config, $"[include]\n\tpath = {included}\n");
        File.WriteAllText(included, $"""
            [core]
            	fsmonitor = {script}
            	hooksPath = {Path.GetDirectoryName(script)}
            	pager = {script}
            	editor = {script}
            	sshCommand = {script}
            	askPass = {script}
            	gitProxy = {script}
            	alternateRefsCommand = {script}
            [pager]
            	show = {script}
            	cat-file = {script}
            	rev-parse = {script}
            [diff]
            	external = {script}
            [diff "evil"]
            	textconv = {script}
            	command = {script}
            [filter "evil"]
            	clean = {script}
            	smudge = {script}
            	process = {script}
            	required = true
            [merge "evil"]
            	driver = {script}
            [alias]
            	cat-file = !{script}
            	rev-parse = !{script}
            [credential]
            	helper = {script}
            [log]
            	showSignature = true
            [gpg]
            	program = {script}

            """);
    }

    public void Dispose() => _folder.Delete(recursive: true);

    private void Plant(string folder, string[] names)
    {
        Directory.CreateDirectory(PathOf(folder));
        foreach (var name in names)
        {
            var path = PathOf(Path.Combine(folder, name));
            File.WriteAllText(path, $"#!/bin/sh\necho \"$0 $*\" >> '{PathOf("ran")}'\n");
            if (!OperatingSystem.IsWindows()) File.SetUnixFileMode(path, Executable);
        }
    }
}
