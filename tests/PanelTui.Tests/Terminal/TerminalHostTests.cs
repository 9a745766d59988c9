using System.Diagnostics;

namespace PanelTui.Tests.Terminal;

/// <summary>The terminal host on a terminal of the system, with a small program on it.</summary>
public sealed class TerminalHostTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("paneltui-").FullName;
    private readonly Dictionary<string, string?> _variables = new()
    {
        ["TERM"] = "xterm-256color", ["LC_ALL"] = "C.UTF-8", ["COLORTERM"] = null, ["NO_COLOR"] = null,
        ["SSH_CONNECTION"] = null, ["PANELTUI_DEBUG"] = null,
    };

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
        _variables["PANELTUI_DEBUG"] = "1";
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
        Kept.Length.ShouldBe(1);
    }

    [Fact]
    public void Another_size_of_the_window_is_painted_whole()
    {
        using var terminal = Open();
        terminal.Type("pump").Until(screen => screen.Row(1) == "pump");
        terminal.Resize(40, 12).Until(screen => screen.Row(11) == "bottom" && screen.Row(1) == "pump");
    }

    [Fact]
    public void Late_answers_and_a_key_cut_in_two_are_never_typed()
    {
        _variables["SSH_CONNECTION"] = "192.0.2.1 1 192.0.2.2 22";
        using var terminal = Open();
        terminal.Type("p\e").Until(screen => screen.Row(1) == "p");
        terminal.Type("[B\e[?62;1c\e]11;rgb:0/0/0\e\\\e[12;40R\eP>|x\e\\u").Until(screen => screen.Row(1) == "pu");
    }

    [Fact]
    public void Without_a_terminal_there_is_a_sentence_and_no_screen()
    {
        Assert.SkipWhen(Pty.WhyNot is not null, Pty.WhyNot ?? "");
        var start = new ProcessStartInfo(Tests, [EntryPoint.ProbeArgument, "kept"])
        {
            RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true,
        };
        using var program = Process.Start(start)!;
        program.StandardError.ReadToEnd().ShouldStartWith("The full screen needs a terminal, and the input is not one.");
        program.StandardOutput.ReadToEnd().ShouldBeEmpty();
        program.WaitForExit();
        program.ExitCode.ShouldBe(2);
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

    [Fact]
    public void An_idle_program_sends_nothing()
    {
        using var terminal = Open();
        terminal.IsQuietFor(TimeSpan.FromSeconds(1)).ShouldBeTrue();
    }

    [Fact]
    public void A_key_costs_one_short_write()
    {
        using var terminal = Open();
        var (bytes, writes) = terminal.CostOf("x", screen => screen.Row(1) == "x");
        bytes.ShouldBeLessThan(60);
        writes.ShouldBe(1);
    }

    [Fact]
    public void The_terminal_is_asked_nothing()
    {
        using var terminal = Open();
        terminal.Type("\u0011").ExitCode();
        foreach (var question in (string[])["\e[c", "\e[>c", "\e[6n", "\e[?6n", "\e[?u", "\e]10;?", "\e]11;?", "t", "$p", "\eP", "\e_"])
            terminal.Sent[..terminal.Sent.IndexOf("bottom", StringComparison.Ordinal)].ShouldNotContain(question);
    }

    [Fact]
    public void NO_COLOR_means_no_colour()
    {
        _variables["NO_COLOR"] = "1";
        using var terminal = Open();
        terminal.Type("\eOQ").Until(screen => screen.Text.Contains("Sure?", StringComparison.Ordinal));
        terminal.Sent.ShouldNotMatch(@"\e\[[0-9;]*\b([34]\d|9\d|10\d)[0-9;]*m");
    }

    [Theory]
    [InlineData("C", "")]
    [InlineData("C.UTF-8", "--ascii")]
    public void A_plain_locale_gets_plain_letters(string locale, string option)
    {
        _variables["LC_ALL"] = locale;
        using var terminal = Open(option);
        terminal.Type("\eOQ").Until(screen => screen.Text.Contains("Sure?", StringComparison.Ordinal));
        terminal.Sent.ShouldAllBe(letter => letter < '\u0080');
    }

    [Theory]
    [InlineData("dumb")]
    [InlineData("")]
    public void A_terminal_that_cannot_show_a_screen_gets_a_sentence(string term)
    {
        _variables["TERM"] = term;
        using var terminal = Start();
        terminal.ExitCode().ShouldBe(2);
        terminal.Sent.ShouldStartWith("The full screen needs a terminal");
        terminal.Sent.ShouldContain("'paneltui check' and 'paneltui calc' work without one.");
        terminal.Sent.ShouldNotContain("\e");
    }

    [Theory]
    [InlineData("")]
    [InlineData("--no-mouse")]
    public void The_mouse_reports_clicks_and_drags_only_and_only_when_asked(string option)
    {
        using var terminal = Open(option);
        terminal.Vt.Modes.Contains("?1002").ShouldBe(option.Length == 0);
        terminal.Sent.ShouldNotContain("?1003h");
        terminal.Type("\e[17~x").Until(screen => screen.Row(1) == "x").Vt.Modes.ShouldNotContain("?1002");
    }

    [Fact]
    public void A_configuration_file_that_lies_around_changes_nothing()
    {
        using var before = Open();
        before.Type("\eOQ").Until(screen => screen.Text.Contains("Sure?", StringComparison.Ordinal));
        Directory.CreateDirectory(Path.Combine(_folder, ".tui"));
        const string hostile = """{"Theme":"Anders","MessageBox":{"DefaultBorderStyle":"Double"},"Dialog":{"DefaultBorderStyle":"Heavy"},"Themes":{"Default":{"MessageBox":{"DefaultBorderStyle":"Double"},"Dialog":{"DefaultBorderStyle":"Heavy"}}}}""";
        File.WriteAllText(Path.Combine(_folder, ".tui", "config.json"), hostile);
        _variables["TUI_CONFIG"] = hostile;
        _variables["HOME"] = _folder;
        using var after = Open();
        after.Type("\eOQ").Until(screen => screen.Text.Contains("Sure?", StringComparison.Ordinal));
        after.Vt.Text.ShouldBe(before.Vt.Text);
    }

    [Fact]
    public void A_program_named_bash_that_lies_around_is_not_run()
    {
        var bait = Path.Combine(_folder, "bash");
        File.WriteAllText(bait, $"#!/bin/sh\ntouch {_folder}/bitten\n");
        Process.Start("/bin/chmod", ["+x", bait])!.WaitForExit();
        using var terminal = Open();
        terminal.Type("\u0011").ExitCode().ShouldBe(0);
        File.Exists(Path.Combine(_folder, "bitten")).ShouldBeFalse();
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private static string Tests => Path.Combine(AppContext.BaseDirectory, "PanelTui.Tests");

    private string[] Kept => File.ReadAllLines(Path.Combine(_folder, "kept"));

    private static string AfterTheScreen(Pty terminal) =>
        terminal.Sent[(terminal.Sent.LastIndexOf("\e[?1049l", StringComparison.Ordinal) + 8)..];

    private static void ShouldBeClean(Pty terminal)
    {
        terminal.LeftBehind.ShouldBeEmpty();
        terminal.ModeIsRestored.ShouldBeTrue("the line is left in raw mode");
    }

    private Pty Open(string option = "") => Start(option).Until(screen => screen.Row(23) == "bottom");

    private Pty Start(string option = "")
    {
        Assert.SkipWhen(Pty.WhyNot is not null, Pty.WhyNot ?? "");
        return Pty.Start([Tests, EntryPoint.ProbeArgument, Path.Combine(_folder, "kept"), option], _variables, _folder);
    }
}
