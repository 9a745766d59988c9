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
        ran.Out.Split('\n').ShouldAllBe(line => line.Length <= 88);
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
        foreach (var file in Directory.GetFiles(folder, "*.panel.yaml")) ran.Out.ShouldContain(file);
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
    [InlineData("check")]
    [InlineData("check", "--jason", "x")]
    [InlineData("calc", "a", "b")]
    public void A_command_line_that_is_not_understood_exits_with_2_and_points_to_help(params string[] args)
    {
        var ran = Ran.Of(args);
        ran.Code.ShouldBe(2);
        ran.Out.ShouldBeEmpty();
        ran.Error.ShouldContain("paneltui --help");
    }

    [Fact]
    public void A_mistyped_command_is_guessed() =>
        Ran.Of("chek").Error.ShouldContain("There is no file chek. Did you mean the command 'check'?");

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

    [GeneratedRegex(@"^paneltui \d+\.\d+\.\d+$")]
    private static partial Regex VersionLine();
}
