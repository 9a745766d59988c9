using System.Diagnostics;

namespace PanelTui.Tests.Terminal;

/// <summary>The terminal host on a terminal of the system, with a small program on it.</summary>
public sealed class TerminalHostTests : TerminalTests
{
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
        Variables["SSH_CONNECTION"] = "192.0.2.1 1 192.0.2.2 22";
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
        program.StandardError.ReadToEnd().ShouldStartWith("paneltui: The full screen needs a terminal, and the input is not one.");
        program.StandardOutput.ReadToEnd().ShouldBeEmpty();
        program.WaitForExit();
        program.ExitCode.ShouldBe(2);
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
        Variables["NO_COLOR"] = "1";
        using var terminal = Open();
        terminal.Type("\eOQ").Until(screen => screen.Text.Contains("Sure?", StringComparison.Ordinal));
        terminal.Sent.ShouldNotMatch(@"\e\[[0-9;]*\b([34]\d|9\d|10\d)[0-9;]*m");
    }

    [Theory]
    [InlineData("C", "")]
    [InlineData("C.UTF-8", "--ascii")]
    public void A_plain_locale_gets_plain_letters(string locale, string option)
    {
        Variables["LC_ALL"] = locale;
        using var terminal = Open(option);
        terminal.Type("\eOQ").Until(screen => screen.Text.Contains("Sure?", StringComparison.Ordinal));
        terminal.Sent.AtLeastOne().ShouldAllBe(letter => letter < '\u0080');
    }

    [Theory]
    [InlineData("dumb")]
    [InlineData("")]
    public void A_terminal_that_cannot_show_a_screen_gets_a_sentence(string term)
    {
        Variables["TERM"] = term;
        using var terminal = Start();
        terminal.ExitCode().ShouldBe(2);
        terminal.Sent.ShouldStartWith("paneltui: The full screen needs a terminal");
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
    }

    [Fact]
    public void A_configuration_file_that_lies_around_changes_nothing()
    {
        using var before = Open();
        before.Type("\eOQ").Until(screen => screen.Text.Contains("Sure?", StringComparison.Ordinal));
        Directory.CreateDirectory(Path.Combine(Folder, ".tui"));
        const string hostile = """{"Theme":"Anders","MessageBox":{"DefaultBorderStyle":"Double"},"Dialog":{"DefaultBorderStyle":"Heavy"},"Themes":{"Default":{"MessageBox":{"DefaultBorderStyle":"Double"},"Dialog":{"DefaultBorderStyle":"Heavy"}}}}""";
        File.WriteAllText(Path.Combine(Folder, ".tui", "config.json"), hostile);
        Variables["TUI_CONFIG"] = hostile;
        Variables["HOME"] = Folder;
        using var after = Open();
        after.Type("\eOQ").Until(screen => screen.Text.Contains("Sure?", StringComparison.Ordinal));
        after.Vt.Text.ShouldBe(before.Vt.Text);
    }

    [Fact]
    public void A_program_named_bash_that_lies_around_is_not_run()
    {
        var bait = Path.Combine(Folder, "bash");
        File.WriteAllText(bait, $"#!/bin/sh\ntouch {Folder}/bitten\n");
        Process.Start("/bin/chmod", ["+x", bait])!.WaitForExit();
        using var terminal = Open();
        terminal.Type("\u0011").ExitCode().ShouldBe(0);
        File.Exists(Path.Combine(Folder, "bitten")).ShouldBeFalse();
    }
}
