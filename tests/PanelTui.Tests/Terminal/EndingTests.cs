namespace PanelTui.Tests.Terminal;

/// <summary>However the program ends, on a terminal of the system: the work is kept, and the terminal given back.</summary>
public sealed class EndingTests : TerminalTests
{
    [Theory]
    [InlineData(1, 129, "Hangup")]
    [InlineData(2, 130, "Signal")]
    [InlineData(3, 131, "Signal")]
    [InlineData(15, 143, "Signal")]
    public void A_signal_leaves_a_clean_terminal_and_the_work_kept(int signal, int exitCode, string kept)
    {
        using var terminal = Open();
        terminal.Signal(signal).ExitCode().ShouldBe(exitCode);
        ShouldBeClean(terminal);
        Kept.ShouldBe([kept]);
    }

    [Fact]
    public void A_signal_while_a_dialog_is_open_ends_the_program_all_the_same()
    {
        using var terminal = Open();
        terminal.Type("\eOQ").Until(screen => screen.Text.Contains("Sure?", StringComparison.Ordinal));
        terminal.Signal(15).ExitCode().ShouldBe(143);
        ShouldBeClean(terminal);
    }

    [Fact]
    public void Quitting_leaves_a_clean_terminal()
    {
        using var terminal = Open();
        terminal.Type("\u0011").ExitCode().ShouldBe(0);
        ShouldBeClean(terminal);
        Kept.ShouldBe(["Quit"]);
    }

    [Theory]
    [InlineData("\e[20~", "a fault")]
    [InlineData("\e[19~", "a fault in the background")]
    public void A_fault_leaves_a_clean_terminal_the_work_kept_and_a_sentence(string key, string fault)
    {
        using var terminal = Open();
        terminal.Type(key).ExitCode().ShouldBe(70);
        ShouldBeClean(terminal);
        Kept.ShouldBe(["Crash"]);
        var parting = AfterTheScreen(terminal);
        parting.ShouldContain($"paneltui stopped because of a fault in itself: {fault}\r\nYour work is in ");
        parting.ShouldNotContain("   at ");
    }

    [Fact]
    public void The_trace_of_a_fault_is_printed_when_asked_for()
    {
        Variables["PANELTUI_DEBUG"] = "1";
        using var terminal = Open();
        terminal.Type("\e[20~").ExitCode().ShouldBe(70);
        AfterTheScreen(terminal).ShouldContain("   at ");
    }

    [Fact]
    public void A_dropped_connection_ends_the_program_with_the_work_kept()
    {
        using var terminal = Open();
        terminal.HangUp();
        terminal.ExitCode().ShouldBe(129);
        Kept.ShouldBe(["Hangup"]);
    }

    [Fact]
    public void A_stalled_connection_does_not_hold_up_the_end()
    {
        using var terminal = Open();
        terminal.Type("\e[23~").Until(screen => screen.Row(5).StartsWith('#')); // F11 sends frame upon frame
        terminal.Stall();
        terminal.Signal(15).ExitCode().ShouldBe(143);
        terminal.ModeIsRestored.ShouldBeTrue();
        Kept.ShouldBe(["Signal"]);
    }

    [Fact]
    public void A_second_signal_ends_a_program_that_is_stuck_in_its_ending()
    {
        using var terminal = Open("--stuck");
        do
            terminal.Signal(15);
        while (!terminal.Program.WaitForExit(100));
        terminal.ExitCode().ShouldBe(143);
    }

    [Fact]
    public void Two_signals_at_once_end_the_program_once()
    {
        using var terminal = Open();
        terminal.Signal(15).Signal(1).ExitCode().ShouldBeOneOf(143, 129);
        ShouldBeClean(terminal);
        Kept.Count.ShouldBe(1);
    }

    [Fact]
    public void Suspending_gives_the_terminal_back_and_coming_back_paints_everything()
    {
        using var terminal = Open();
        terminal.Type("pump").Until(screen => screen.Row(1) == "pump");
        terminal.Signal(20).Until(screen => screen.Modes.SequenceEqual(["?25"]));
        terminal.Signal(18).Until(screen => screen.Modes.Contains("?1049") && screen.Row(1) == "pump");
        terminal.Type("\u0011").ExitCode().ShouldBe(0);
    }
}
