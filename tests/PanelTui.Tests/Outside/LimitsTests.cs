using PanelTui.Tests.Terminal;

namespace PanelTui.Tests.Outside;

/// <summary>The native build with few files, little memory, one process: a sentence or the work, and the terminal as it was. Runs with PANELTUI_EXE.</summary>
public sealed class LimitsTests : TerminalTests
{
    private string File => Path.Combine(Folder, "shed.panel.yaml");

    public LimitsTests()
    {
        System.IO.File.WriteAllText(File, Shed.Text);
        Variables["HOME"] = Folder;
        Variables["XDG_STATE_HOME"] = Folder;
    }

    [Theory]
    [InlineData("-n 4")]
    [InlineData("-n 5")]
    [InlineData("-n 8")]
    [InlineData("-n 9")]
    [InlineData("-n 12")]
    [InlineData("-n 16")]
    [InlineData("-v 102400")]
    [InlineData("-v 153600")]
    [InlineData("-v 262144")]
    public void A_command_does_its_work_or_says_why_not(string limit)
    {
        using var terminal = Limited(limit, "check", File);
        terminal.ExitCode().ShouldBeOneOf(0, 2);
        ShouldBeASentenceAtMost(terminal);
    }

    [Theory]
    [InlineData("-n 4")]
    [InlineData("-n 8")]
    [InlineData("-n 9")]
    [InlineData("-n 12")]
    [InlineData("-n 16")]
    [InlineData("-n 20")]
    [InlineData("-v 102400")]
    [InlineData("-v 153600")]
    [InlineData("-v 262144")]
    [InlineData("-v 307200")]
    [InlineData("-v 409600")]
    public void The_editor_works_and_ends_in_order_or_says_why_not(string limit)
    {
        using var terminal = Limited(limit, File);
        terminal.Until(screen => terminal.Sent.Contains("paneltui: ", StringComparison.Ordinal) || screen.Text.Contains("Well pump", StringComparison.Ordinal));
        if (!terminal.Sent.Contains("paneltui: ", StringComparison.Ordinal))
        {
            terminal.Type("d").Until(screen => screen.Text.Contains("· changed", StringComparison.Ordinal));
            terminal.Signal(15).ExitCode().ShouldBe(143, terminal.Sent);
            ShouldBeClean(terminal);
            return;
        }

        terminal.ExitCode().ShouldBe(2, terminal.Sent);
        terminal.ModeIsRestored.ShouldBeTrue();
        ShouldBeASentenceAtMost(terminal);
    }

    private static void ShouldBeASentenceAtMost(Pty terminal)
    {
        terminal.Sent.ShouldNotContain("Unhandled");
        terminal.Sent.ShouldNotContain("   at ");
        terminal.Sent.ShouldNotContain("\e");
        terminal.Sent.ShouldNotBeEmpty();
    }

    private Pty Limited(string limit, params string[] arguments)
    {
        Assert.SkipWhen(RealProgram.Native is null, "needs PANELTUI_EXE");
        return Pty.Start(["/bin/sh", "-c", $"ulimit {limit}; exec \"$0\" \"$@\"", RealProgram.Path, .. arguments], Variables, Folder);
    }
}
