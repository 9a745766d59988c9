using PanelTui.Tests.Terminal;

namespace PanelTui.Tests.Outside;

/// <summary>The program itself in a folder that somebody else filled: nothing there runs. PANELTUI_EXE has the native build tried, with each PATH alone.</summary>
public sealed class HostileFolderTests : TerminalTests
{
    private readonly HostileRepository _there = new();

    private static string Usual => Environment.GetEnvironmentVariable("PATH")!;

    /// <summary>What is written before the usual PATH: the current folder by dot, by nothing, by its full name; and one below it.</summary>
    private string[] Paths => RealProgram.Native is null
        ? [$".::relative:{_there.Folder}:./relative:../x"]
        : [".", "", "relative", "./relative", _there.Folder, $"{_there.Folder}/relative/.."];

    [Fact]
    public void The_trap_works_where_git_is_asked_without_care()
    {
        _there.Git("status");
        _there.Git("diff");
        _there.Ran.ShouldContain("evil");
    }

    [Fact]
    public void Opening_a_schedule_in_the_editor_runs_nothing_there()
    {
        foreach (var path in Paths)
        {
            Variables["PATH"] = $"{path}:{Usual}";
            Variables["HOME"] = Folder;
            Variables["XDG_STATE_HOME"] = Folder;
            using var terminal = Start(HostileRepository.Schedule);
            terminal.Until(screen => screen.Text.Contains(HostileRepository.Branch, StringComparison.Ordinal)); // git has answered
            terminal.Type("v").Until(screen => screen.Text.Contains("Changed since", StringComparison.Ordinal));
            terminal.Type("\e[C").Until(screen => screen.Text.Contains("last commit in git", StringComparison.Ordinal));
            terminal.Type("\e").Until(screen => screen.Text.Contains("Well pump", StringComparison.Ordinal));
            terminal.Type("\u0011").ExitCode().ShouldBe(0, path);
            _there.Ran.ShouldBeEmpty(path);
        }
    }

    [Fact]
    public void Comparing_with_git_runs_nothing_there()
    {
        string[][] commands = RealProgram.Native is null
            ? [["diff", HostileRepository.Schedule]]
            :
            [
                ["diff", HostileRepository.Schedule], ["diff", "HEAD", HostileRepository.Schedule], ["diff", "HEAD", "HEAD", HostileRepository.Schedule],
                ["check", "."], ["calc", HostileRepository.Schedule], ["git-setup", "-n"],
                ["merge", HostileRepository.Schedule, HostileRepository.Schedule, HostileRepository.Schedule, "-n"],
            ];
        foreach (var path in Paths)
        {
            foreach (var command in commands)
            {
                Variables["PATH"] = $"{path}:{Usual}";
                using var terminal = Start(command);
                terminal.ExitCode().ShouldBeLessThan(2, $"{path}: {terminal.Sent}");
                _there.Ran.ShouldBeEmpty($"{string.Join(' ', command)} with {path}");
            }
        }
    }

    protected override void Dispose(bool disposing)
    {
        _there.Dispose();
        base.Dispose(disposing);
    }

    private Pty Start(params string[] arguments)
    {
        Assert.SkipWhen(Pty.WhyNot is not null, Pty.WhyNot ?? "");
        return Pty.Start([RealProgram.Path, .. arguments], Variables, _there.Folder);
    }
}
