using System.Diagnostics;
using System.Text.RegularExpressions;

namespace PanelTui.Tests.CommandLine;

public partial class MannersTests
{
    [Theory]
    [InlineData("--help")]
    [InlineData("-h")]
    [InlineData("help")]
    [InlineData("check", "--help")]
    [InlineData("calc", "-h")]
    [InlineData("help", "new")]
    public void Help_goes_to_standard_output_and_exits_with_0(params string[] args)
    {
        var ran = Ran.Of(args);
        ran.Code.ShouldBe(0);
        ran.Error.ShouldBeEmpty();
        ran.Out.ShouldContain("Examples:");
        ran.Out.Lines().ShouldAllBe(line => line.Length <= 80);
        ran.Out.Split('\n').Length.ShouldBeLessThanOrEqualTo(50);
    }

    [Fact]
    public void The_first_line_of_the_version_is_name_and_number() => VersionLine().IsMatch(Ran.Of("--version").Out.Split('\n')[0]).ShouldBeTrue();

    [Fact]
    public void A_mistyped_command_with_arguments_is_guessed_too() =>
        Ran.Of("chek", "x", "--json").Error.ShouldContain("did you mean the command 'check'?");

    [Fact]
    public void A_folder_stands_for_the_schedules_in_it()
    {
        var folder = Path.GetDirectoryName(Shed.Example("packing-shed"))!;
        var ran = Ran.Of("check", folder);
        ran.Code.ShouldBe(0);
        foreach (var file in Directory.GetFiles(folder, "*.panel.yaml").AtLeastOne()) ran.Out.ShouldContain(file);
        using var empty = new TempFolder();
        Ran.Of("check", Path.GetDirectoryName(empty.File("x"))!).Code.ShouldBe(2);
    }

    [Theory]
    [InlineData("paneltui ca", "calc")]
    [InlineData("paneltui calc x --why ch", "chain")]
    [InlineData("paneltui rules shared", "shared-neutral-on-one-leg")]
    public void The_shell_is_told_how_a_word_may_go_on(string line, string expected) =>
        Ran.Of($"[suggest:{line.Length}]", line).Out.Split('\n').ShouldContain(expected);

    [Theory]
    [InlineData("bash")]
    [InlineData("zsh")]
    [InlineData("fish")]
    public void Each_shell_has_its_script(string shell) => Ran.Of("completions", shell).Out.ShouldContain("[suggest:");

    [Theory]
    [InlineData(">/dev/full")]
    [InlineData(">&-")]
    public void An_output_that_cannot_be_written_is_told_in_a_sentence(string where)
    {
        var (code, error) = Shell($"calc {Shed.Example("packing-shed")} {where}");
        code.ShouldBe(2);
        error.ShouldStartWith("paneltui: the output could not be written: ");
        error.TrimEnd().ShouldNotContain('\n');
    }

    [Fact]
    public void Two_commands_into_one_file_stand_there_one_after_the_other()
    {
        using var folder = new TempFolder();
        Shell($"--version >{folder.File("out")}; \"$0\" --version >>{folder.File("out")}; (\"$0\" --version; \"$0\" --version) >{folder.File("both")}").Code.ShouldBe(0);
        File.ReadAllText(folder.File("both")).ShouldBe(File.ReadAllText(folder.File("out")));
        File.ReadAllLines(folder.File("both")).Length.ShouldBe(4);
    }

    [Theory]
    [InlineData("calc - <&-", "paneltui: standard input cannot be read: it is closed", 2)]
    [InlineData("check none.yaml 2>&-", "", 2)]
    [InlineData("--version >&- 2>&-", "", 2)]
    [InlineData("<&- >&- 2>&-", "", 2)]
    public void A_closed_stream_is_told_in_a_sentence_or_not_at_all(string line, string said, int exitCode)
    {
        var (code, error) = Shell(line);
        code.ShouldBe(exitCode);
        error.TrimEnd().ShouldBe(said);
    }

    [Fact]
    public void A_reader_that_goes_away_is_no_fault() => Shell($"calc {Shed.Example("packing-shed")} | head -1 >/dev/null").ShouldBe((0, ""));

    private static (int Code, string Error) Shell(string line)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "needs a shell");
        var start = new ProcessStartInfo("/bin/sh", ["-c", $"\"$0\" {line}", Path.Combine(AppContext.BaseDirectory, "paneltui")]) { RedirectStandardError = true };
        using var program = Process.Start(start)!;
        var error = program.StandardError.ReadToEnd();
        program.WaitForExit();
        return (program.ExitCode, error);
    }

    [Fact]
    public void Info_tells_where_unsaved_work_is_kept() => Ran.Of("info").Out.ShouldContain("unsaved work");

    [Theory]
    [InlineData("'check' needs FILE: a schedule; - for standard input", "check", "check")]
    [InlineData("there is no option '--jason'; did you mean --json?", "check", "check", "--jason", "x")]
    [InlineData("'check' has no option '--table'", "check", "check", "x", "--table")]
    [InlineData("'b' is one argument too many; 'calc' takes FILE", "calc", "calc", "a", "b")]
    [InlineData("'--why' needs a value: a figure, such as minimum-ampacity", "calc", "calc", "a", "--why")]
    [InlineData("'--at' does not take 'noon'; expected: an hour of the day, 0 to 23", "run", "run", "a", "--at", "noon")]
    [InlineData("'--severity' does not take 'high'; expected: error, warning or note", "check", "check", "a", "--severity", "high")]
    [InlineData("'csh' is not bash, zsh or fish", "completions", "completions", "csh")]
    [InlineData("'merge' needs BASE OURS THEIRS", "merge", "merge", "a", "b")]
    [InlineData("'schema' takes no argument, and 'x' is one", "schema", "schema", "x")]
    [InlineData("there is no figure 'imbalanse' here", "calc", "calc", "-", "--why", "imbalanse")]
    [InlineData("there is no scenario 'Nigth'", "run", "run", "-", "--scenario", "Nigth")]
    [InlineData("there is no sheet 'dor'", "print", "print", "dor", "-")]
    [InlineData("there is no format 'doc'", "print", "print", "directory", "-", "--format", "doc")]
    [InlineData("'--tape' is for labels, and 'directory' has none", "print", "print", "directory", "-", "--tape", "9")]
    [InlineData("there is no command 'bogus'", null, "help", "bogus")]
    [InlineData("'--json' is an option of a command: name the command first", null, "shed.yaml", "--json")]
    [InlineData("there is no file 'bogus'", null, "bogus")]
    public void A_command_line_that_is_not_understood_exits_with_2_and_points_to_the_help_of_its_command(string said, string? command, params string[] args)
    {
        var ran = Ran.With(Shed.Text, args);
        ran.Code.ShouldBe(2);
        ran.Out.ShouldBeEmpty();
        ran.Error.ShouldStartWith($"paneltui: {said}");
        ran.Error.ShouldEndWith($"\nTry 'paneltui {(command is null ? "" : $"{command} ")}--help'.\n");
        ran.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length.ShouldBe(2);
    }

    [Theory]
    [InlineData("--version")]
    [InlineData("-V")]
    [InlineData("version")]
    [InlineData("help", "version")]
    public void The_version_is_told_however_it_is_asked_for(params string[] args) => Ran.Of(args).ShouldBe(new Ran(0, Ran.Of("--version").Out, ""));

    [Fact]
    public void Standard_output_is_a_dash_wherever_a_command_writes_a_file()
    {
        using var folder = new TempFolder();
        var (old, ours) = (folder.File("base.yaml", Shed.Text), folder.File("ours.yaml", Shed.Text.Replace("Well pump", "Barn pump", StringComparison.Ordinal)));
        Ran.Of("print", "directory", old, "-o", "-").ShouldBe(Ran.Of("print", "directory", old));
        Ran.Of("print", "directory", old, "--output", "-", "--format", "csv").ShouldBe(Ran.Of("print", "directory", old, "--format", "csv"));
        Ran.Of("print", "directory", old, "-o", "-", "--format", "pdf").Error.ShouldBe("paneltui: pdf is not for a terminal: name a file with '-o'\n");
        Ran.Of("merge", old, ours, old, "--output", "-").ShouldBe(new Ran(0, File.ReadAllText(ours), ""));
        File.Exists("-").ShouldBeFalse();
    }

    [Theory]
    [InlineData("print", "all", "-", "-o", "-")]
    [InlineData("print", "directory", "-", "-o", "-", "--force")]
    [InlineData("print", "directory", "-", "-o", "-", "--json")]
    [InlineData("print", "directory", "-", "-o", "-", "-n")]
    [InlineData("merge", "a", "b", "c", "-o", "-", "--json")]
    [InlineData("merge", "a", "b", "c", "-o", "-", "-n")]
    [InlineData("new", "-", "-n")]
    public void What_does_not_go_with_standard_output_is_refused(params string[] args)
    {
        var ran = Ran.With(Shed.Text, args);
        ran.Code.ShouldBe(2);
        ran.Out.ShouldBeEmpty();
        ran.Error.ShouldEndWith($"Try 'paneltui {args[0]} --help'.\n");
    }

    [Fact]
    public void A_mistyped_command_is_guessed() =>
        Ran.Of("chek").Error.ShouldContain("there is no file 'chek'. Did you mean the command 'check'?");

    [Fact]
    public void New_writes_a_commented_schedule_that_checks_without_an_error_and_never_overwrites()
    {
        using var folder = new TempFolder();
        var file = folder.File("mine.panel.yaml");
        Ran.Of("new", file).Code.ShouldBe(0);
        Ran.Of("check", file).Code.ShouldBe(0);
        File.WriteAllText(file, "mine");
        Ran.Of("new", file).Code.ShouldBe(2);
        File.ReadAllText(file).ShouldBe("mine");
    }

    [Fact]
    public void New_on_standard_output_is_read_back_from_standard_input() =>
        Ran.With(Ran.Of("new", "-").Out, "check", "-").Code.ShouldBe(0);

    public static TheoryData<string> VerbNames => [.. PanelTui.CommandLine.Verbs.All.Select(verb => verb.Name)];

    [Theory, MemberData(nameof(VerbNames))]
    public void Every_command_explains_itself_and_guesses_a_mistyped_option(string verb)
    {
        var help = Ran.Of(verb, "--help");
        help.Code.ShouldBe(0);
        help.Error.ShouldBeEmpty();
        help.Out.ShouldContain("Examples:");
        help.Out.Lines().ShouldAllBe(line => line.Length <= 80);
        help.ShouldBe(Ran.Of("help", verb));
        Ran.Of("--help").Out.ShouldContain($"  {verb} ");
        var wrong = Ran.Of(verb, "--hlp");
        wrong.Code.ShouldBe(2);
        wrong.Out.ShouldBeEmpty();
        wrong.Error.ShouldContain("did you mean --help");
    }

    [Fact]
    public void Help_begins_with_what_it_is_for_and_ends_with_where_the_rest_is()
    {
        var order = Ran.Of("--help").Out;
        int[] places = [.. ((string[])["PanelTui:", "Usage:", "Examples:", "Begin:", "Check", "Compare:", "Deliver:", "Set up:", "Options:", "Exit codes:", "More:"])
            .Select(heading => order.IndexOf(heading, StringComparison.Ordinal))];
        places.ShouldBe([.. places.Order()]);
        places[0].ShouldBe(0);
    }

    [Fact]
    public void A_dry_run_says_what_would_be_written_and_writes_nothing()
    {
        using var folder = new TempFolder();
        var shed = folder.File("shed.panel.yaml", Shed.Text);
        var other = folder.File("other.panel.yaml", Shed.Text.Replace("Well pump", "Barn pump", StringComparison.Ordinal));
        string[][] lines =
        [
            ["new", folder.File("new.yaml"), "--dry-run"], ["print", "directory", shed, "-o", folder.File("d.pdf"), "-n"],
            ["print", "all", shed, "-o", folder.File("permit"), "-n"], ["balance", shed, "--write", "-n"], ["merge", shed, shed, other, "-n"],
        ];
        foreach (var line in lines)
        {
            var ran = Ran.Of(line);
            ran.Code.ShouldBe(0, ran.Error);
        }

        Directory.GetFileSystemEntries(Path.GetDirectoryName(shed)!).Order().ShouldBe(new[] { other, shed }.Order());
        File.ReadAllText(shed).ShouldBe(Shed.Text);
        Ran.Of("print", "directory", shed, "-o", other, "-n").Code.ShouldBe(2, "it would be refused without -n, too");
    }

    [Fact]
    public void A_person_who_wants_no_question_is_asked_none()
    {
        using var folder = new TempFolder();
        var file = folder.File("barn.panel.yaml");
        Ran.Answering([], "new", file, "--no-input").Code.ShouldBe(0);
        File.ReadAllText(file).ShouldBe(Ran.Of("new", "-").Out);
    }

    [Fact]
    public void Without_a_terminal_and_a_file_there_is_a_short_sentence_and_exit_2()
    {
        var ran = Ran.Of();
        ran.Code.ShouldBe(2);
        ran.Out.ShouldBeEmpty();
        ran.Error.ShouldContain("paneltui FILE");
        ran.Error.ShouldContain("paneltui --help");
    }

    [Theory]
    [InlineData(1, "", "a.panel.yaml")]
    [InlineData(2, "2", "b.panel.yaml")]
    [InlineData(2, "9 1", "a.panel.yaml")]
    [InlineData(2, "", null)]
    [InlineData(0, "", null)]
    public void Without_a_file_the_only_schedule_here_is_opened_and_of_several_one_is_chosen(int files, string answers, string? chosen)
    {
        using var folder = new TempFolder();
        for (var at = 0; at < files; at++) folder.File($"{(char)('a' + at)}.panel.yaml", Shed.Text);
        using var person = new StringReader(answers.Replace(' ', '\n'));
        using var nothing = new StringWriter();
        var streams = new PanelTui.CommandLine.Streams(() => Stream.Null, nothing, nothing) { Person = () => person };
        PanelTui.CommandLine.ScheduleChoice.In(Path.GetDirectoryName(folder.File("x"))!, streams).ShouldBe(chosen is null ? null : folder.File(chosen));
    }

    [Fact]
    public void Every_variable_that_is_heeded_is_told_by_info()
    {
        var told = Ran.Of("info").Out;
        foreach (var name in (string[])["TERM", "NO_COLOR", "LC_ALL", "LANG", "SSH_CONNECTION", "XDG_STATE_HOME", "PANELTUI_LOOK", "PANELTUI_ESCAPE"])
            told.ShouldContain(name);
    }

    [Theory]
    [InlineData("check", "-")]
    [InlineData("calc", "-")]
    [InlineData("run", "-")]
    [InlineData("balance", "-")]
    [InlineData("transfer", "-")]
    [InlineData("print", "directory", "-")]
    public void A_dash_is_standard_input(params string[] args) => Ran.With(Shed.Text, args).Code.ShouldBe(0);

    [Fact]
    public void Two_dashes_end_the_options() => Ran.Of("check", "--", "-x.yaml").Error.ShouldContain("there is no file '-x.yaml'");

    [GeneratedRegex(@"^paneltui \d+\.\d+\.\d+( \([0-9a-f]{7}\))?$")]
    private static partial Regex VersionLine();
}
