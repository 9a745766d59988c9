using PanelTui.Documents.Files;
using PanelTui.Documents.Recovery;
using PanelTui.Documents.Text;

namespace PanelTui.Tests.Terminal;

/// <summary>The editor itself on a terminal of the system; PANELTUI_EXE names another build of it, such as the native one.</summary>
public sealed class EditorTerminalTests : TerminalTests
{
    private const string Schedule = """
        schedule: 1
        panel:
          name: Packing shed standby
          system: 120/240 V 1ph 3W
          spaces: 8
          bus: 100 A
          main: 60 A
        circuits:
          - {space: 1, name: "Sorting lights \u202e\u009b2J", breaker: 15 A, loads: [{kind: lighting, rating: 480 W}]}
          - {space: 2, name: Well pump, breaker: 20 A, loads: [{kind: motor, rating: 1/2 hp}]}

        """;

    public EditorTerminalTests()
    {
        File.WriteAllText(Path.Combine(Folder, "shed.yaml"), Schedule);
        Variables["HOME"] = Folder;
        Variables["XDG_STATE_HOME"] = Path.Combine(Folder, "state");
    }

    [Theory]
    [InlineData(1, 129)]
    [InlineData(2, 130)]
    [InlineData(3, 131)]
    [InlineData(15, 143)]
    [InlineData(6, 134)]
    public void A_signal_leaves_a_clean_terminal(int signal, int exitCode)
    {
        using var terminal = OpenEditor();
        terminal.Signal(signal).ExitCode().ShouldBe(exitCode);
        ShouldBeClean(terminal);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(15)]
    [InlineData(6)]
    public void A_signal_keeps_the_unsaved_work_and_says_how_to_have_it_back(int signal)
    {
        using var terminal = OpenEditor();
        terminal.Type("d").Until(IsChanged);
        terminal.Signal(signal).ExitCode().ShouldBe(128 + signal);
        ShouldHoldTheWork();
        terminal.Sent.ShouldContain("'paneltui shed.yaml' offers them.");
    }

    [Fact]
    public void A_dropped_line_keeps_the_unsaved_work()
    {
        using var terminal = OpenEditor();
        terminal.Type("d").Until(IsChanged).HangUp();
        terminal.Program.WaitForExit(TimeSpan.FromSeconds(15)).ShouldBeTrue();
        ShouldHoldTheWork();
    }

    [Fact]
    public void Work_is_on_the_disk_soon_after_a_key_and_outlives_a_kill()
    {
        using var terminal = OpenEditor();
        terminal.Type("d").Until(IsChanged);
        while (!Journals.Any(journal => new FileInfo(journal).Length > 0)) terminal.IsQuietFor(TimeSpan.FromMilliseconds(20));
        terminal.Signal(9).ExitCode().ShouldBe(137);
        ShouldHoldTheWork();
    }

    [Fact]
    public void Work_that_is_undone_saved_or_given_up_leaves_nothing_behind()
    {
        using var terminal = OpenEditor();
        terminal.Type("d").Until(IsChanged).Type("u").Until(vt => vt.Text.Contains("Undone", StringComparison.Ordinal));
        terminal.Type("d").Until(IsChanged).Type("qd").ExitCode().ShouldBe(0);
        Journals.ShouldBeEmpty();
        Directory.GetFileSystemEntries(Folder).Select(Path.GetFileName).ShouldBeSubsetOf(["shed.yaml", "state"]);
    }

    [Fact]
    public void Quitting_leaves_a_clean_terminal()
    {
        using var terminal = OpenEditor();
        terminal.Type("\u0011").ExitCode().ShouldBe(0);
        ShouldBeClean(terminal);
    }

    /// <summary>By a shell with job control, as a person has it: the key, and the command by its name.</summary>
    [Theory]
    [InlineData("Z")]
    [InlineData(":suspend\r")]
    public void The_editor_suspends_to_the_shell_and_fg_paints_it_whole_again(string keys)
    {
        Assert.SkipWhen(Pty.WhyNot is not null, Pty.WhyNot ?? "");
        Variables["PS1"] = "shell% ";
        Variables["ENV"] = null;
        using var terminal = Pty.Start(["/bin/sh", "-i"], Variables, Folder);
        terminal.Until(_ => terminal.Sent.EndsWith("shell% ", StringComparison.Ordinal)).Type($"'{RealProgram.Path}' shed.yaml\r").Until(IsEditor);
        terminal.Type("d").Until(IsChanged);
        terminal.Type(keys).Until(screen => !screen.Modes.Contains("?1049") && terminal.Sent.EndsWith("shell% ", StringComparison.Ordinal));
        terminal.Sent.ShouldContain("Stopped");
        terminal.Type("fg\r").Until(screen => IsEditor(screen) && IsChanged(screen));
        terminal.Type("u").Until(screen => screen.Text.Contains("Undone", StringComparison.Ordinal));
        terminal.Type("\u0011").Until(screen => !screen.Modes.Contains("?1049") && terminal.Sent.EndsWith("shell% ", StringComparison.Ordinal));
        terminal.Type("exit\r").ExitCode().ShouldBe(0);
    }

    private static bool IsEditor(Vt screen) => screen.Modes.Contains("?1049") && screen.Text.Contains("Packing shed standby", StringComparison.Ordinal);

    [Fact]
    public void A_change_by_another_program_is_on_the_screen_without_a_key()
    {
        using var terminal = OpenEditor();
        File.WriteAllText(Path.Combine(Folder, "shed.yaml.new"), Schedule.Replace("Well pump", "Barn pump", StringComparison.Ordinal));
        File.Move(Path.Combine(Folder, "shed.yaml.new"), Path.Combine(Folder, "shed.yaml"), overwrite: true);
        terminal.Until(Says("has been changed by another program. ^S asks"));
        terminal.Type("\u0013").Until(Says("What that program changed")).Type("r").Until(Says("Barn pump"));
        terminal.Until(vt => !Says("newer on disk")(vt));
        File.Delete(Path.Combine(Folder, "shed.yaml"));
        terminal.Until(Says("has been deleted by another program. ^S asks"));
    }

    [Theory]
    [InlineData("hard.yaml", false)]
    [InlineData("soft.yaml", true)]
    public void A_second_editor_with_another_home_is_told(string name, bool hasSaved)
    {
        var file = Path.Combine(Folder, "shed.yaml");
        Saving.Finished.Of("/bin/ln", file, Path.Combine(Folder, "hard.yaml")).Code.ShouldBe(0);
        File.CreateSymbolicLink(Path.Combine(Folder, "soft.yaml"), file);
        if (name != "hard.yaml") File.Delete(Path.Combine(Folder, "hard.yaml"));
        using var first = OpenEditor();
        if (hasSaved) first.Type("d").Until(IsChanged).Type("\u0013").Until(Says("Saved"));
        Variables["HOME"] = Directory.CreateDirectory(Path.Combine(Folder, "other")).FullName;
        Variables["XDG_STATE_HOME"] = null;
        using var second = StartEditor(name);
        second.Until(Says($"process {first.Program.Id}."));
        second.Vt.Text.ShouldContain("is already open in another editor");
        second.Type("l").Until(Says("Opened to look only"));
        first.Type("q").ExitCode();
        second.Type("\u0011").ExitCode();
    }

    [Fact]
    public void Without_a_home_it_is_said_once_and_nothing_lies_beside_the_schedule()
    {
        Variables["HOME"] = Path.Combine(Folder, "gone");
        Variables["XDG_STATE_HOME"] = "state";
        using var terminal = OpenEditor();
        terminal.Until(Says("Unsaved work cannot be kept: there is no home folder"));
        terminal.Type("d").Until(Says("changed, no recovery copy")).Type("\u0013").Until(Says("Saved"));
        terminal.Type("\u0011").ExitCode().ShouldBe(0);
        Directory.GetFileSystemEntries(Folder).Select(Path.GetFileName).ShouldBe(["shed.yaml"]);
    }

    [Fact]
    public void Ctrl_S_saves_and_does_not_stop_the_line()
    {
        using var terminal = OpenEditor();
        terminal.Type("d").Until(IsChanged).Type("\u0013").Until(screen => screen.Text.Contains("Saved", StringComparison.Ordinal));
        terminal.Type("u").Until(IsChanged);
    }

    /// <summary>Twenty-seven kilobytes, more than the line takes at once: the program reads them in pieces.</summary>
    [Fact]
    public void A_paste_full_of_end_marks_does_not_quit_and_loses_no_work()
    {
        using var terminal = OpenEditor();
        terminal.Type("d").Until(IsChanged);
        terminal.Type($"\e[200~{string.Concat(Enumerable.Repeat("\e[201~ \"qd \"", 3000))}\e[201~");
        terminal.IsQuietFor(TimeSpan.FromMilliseconds(1500));
        terminal.Type("?").Until(screen => !screen.Text.Contains("Well pump", StringComparison.Ordinal));
        terminal.Program.HasExited.ShouldBeFalse();
    }

    [Fact]
    public void Escape_does_not_quit()
    {
        using var terminal = OpenEditor();
        terminal.Type("\e").IsQuietFor(TimeSpan.FromSeconds(1));
        terminal.Program.HasExited.ShouldBeFalse();
    }

    [Fact]
    public void NO_COLOR_means_no_colour()
    {
        Variables["NO_COLOR"] = "1";
        using var terminal = OpenEditor();
        terminal.Sent.ShouldNotMatch(@"\e\[[0-9;]*\b([34]\d|9\d|10\d)[0-9;]*m");
    }

    [Fact]
    public void A_plain_locale_gets_plain_letters()
    {
        Variables["LC_ALL"] = "C";
        using var terminal = OpenEditor();
        terminal.Sent.AtLeastOne().ShouldAllBe(letter => letter < '\u0080');
    }

    [Fact]
    public void Text_of_the_file_never_reaches_the_terminal_raw()
    {
        using var terminal = OpenEditor();
        terminal.Sent.ShouldNotContain("\u202e");
        terminal.Sent.ShouldNotContain("\u009b");
    }

    [Fact]
    public void An_idle_editor_sends_nothing()
    {
        using var terminal = OpenEditor();
        terminal.IsQuietFor(TimeSpan.FromSeconds(1)).ShouldBeTrue();
    }

    [Fact]
    public void A_key_costs_one_write_of_less_than_400_bytes()
    {
        using var terminal = OpenEditor();
        var before = terminal.Vt.Text;
        var (bytes, writes) = terminal.CostOf("\e[B", screen => screen.Cost.Writes > 0);
        bytes.ShouldBeLessThan(400, before);
        writes.ShouldBe(1);
    }

    [Fact]
    public void The_terminal_is_asked_nothing()
    {
        using var terminal = OpenEditor();
        foreach (var question in (string[])["\e[c", "\e[>c", "\e[6n", "\e[?6n", "\e[?u", "\e]10;?", "\e]11;?", "\eP", "\e_"])
            terminal.Sent.ShouldNotContain(question, Case.Sensitive);
    }

    [Fact]
    public void A_terminal_that_cannot_move_its_cursor_gets_a_sentence()
    {
        Variables["TERM"] = "dumb";
        using var terminal = StartEditor();
        terminal.ExitCode().ShouldBe(2);
        terminal.Sent.ShouldContain("'paneltui check' and 'paneltui calc' work without one.");
        terminal.Sent.ShouldNotContain("\e");
    }

    private string[] Journals =>
        Directory.Exists(Path.Combine(Folder, "state")) ? Directory.GetFiles(Path.Combine(Folder, "state"), "*.journal", SearchOption.AllDirectories) : [];

    private static bool IsChanged(Vt vt) => vt.Text.Contains("· changed", StringComparison.Ordinal);

    private static Func<Vt, bool> Says(string text) => vt => string.Join(' ', vt.Text.Split('\n').Select(row => row.Trim())).Contains(text, StringComparison.Ordinal);

    private void ShouldHoldTheWork()
    {
        File.ReadAllText(Path.Combine(Folder, "shed.yaml")).ShouldBe(Schedule);
        var work = UnsavedWork.Of(new StateFolder(Path.Combine(Folder, "state", "paneltui")), Path.Combine(Folder, "shed.yaml"), SourceText.FromString(Schedule));
        work.ShouldHaveSingleItem().Text.Text.ShouldNotContain("Sorting lights");
    }

    private Pty OpenEditor()
    {
        var terminal = StartEditor().Until(screen => screen.Modes.Contains("?1049") && screen.Text.Length > 0);
        while (!terminal.IsQuietFor(TimeSpan.FromMilliseconds(200)))
        {
            // the first frames are still coming
        }

        return terminal;
    }

    private Pty StartEditor(string name = "shed.yaml")
    {
        Assert.SkipWhen(Pty.WhyNot is not null, Pty.WhyNot ?? "");
        return Pty.Start([RealProgram.Path, name], Variables, Folder);
    }
}
