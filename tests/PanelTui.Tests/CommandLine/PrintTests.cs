using PanelTui.CommandLine;
using PanelTui.Tests.Sheets;

namespace PanelTui.Tests.CommandLine;

public class PrintTests
{
    private static readonly string Text = SheetCases.TextNamed("Mill");

    [Fact]
    public void A_sheet_goes_to_standard_output_as_text() =>
        Ran.With(Text, "print", "directory", "-").Out.ShouldStartWith("Circuit directory: Mill\n");

    [Theory]
    [InlineData("door.html", "<!DOCTYPE html>")]
    [InlineData("door.MD", "# Circuit directory: Mill")]
    [InlineData("door.csv", "Space,")]
    [InlineData("door.pdf", "%PDF-")]
    public void The_ending_of_the_file_tells_the_format(string name, string start)
    {
        using var folder = new TempFolder();
        Ran.With(Text, "print", "directory", "-", "-o", folder.File(name)).Code.ShouldBe(ExitCode.Clean);
        File.ReadAllText(folder.File(name)).ShouldStartWith(start);
    }

    [Fact]
    public void An_existing_file_stays_as_it_is()
    {
        using var folder = new TempFolder();
        var path = folder.File("door.txt", "mine");
        var ran = Ran.With(Text, "print", "directory", "-", "-o", path);
        (ran.Code, File.ReadAllText(path)).ShouldBe((ExitCode.Unusable, "mine"));
        ran.Error.ShouldContain("--force");
    }

    [Fact]
    public void Told_to_it_overwrites()
    {
        using var folder = new TempFolder();
        var path = folder.File("door.txt", "mine");
        Ran.With(Text, "print", "directory", "-", "-o", path, "--force").Code.ShouldBe(ExitCode.Clean);
        File.ReadAllText(path).ShouldStartWith("Circuit directory");
        Directory.GetFiles(Path.GetDirectoryName(path)!).Length.ShouldBe(1);
    }

    [Theory, InlineData(false), InlineData(true)]
    public void It_never_writes_through_a_link(bool force)
    {
        using var folder = new TempFolder();
        var (target, link) = (folder.File("target.txt", "mine"), folder.File("link.txt"));
        File.CreateSymbolicLink(link, target);
        Ran.With(Text, ["print", "directory", "-", "-o", link, .. force ? new[] { "--force" } : []]);
        File.ReadAllText(target).ShouldBe("mine");
    }

    [Fact]
    public void The_schedule_itself_is_never_overwritten()
    {
        using var folder = new TempFolder();
        var path = folder.File("mill.panel.yaml", Text);
        Ran.Of("print", "directory", path, "-o", path, "--format", "text", "--force").Code.ShouldBe(ExitCode.Unusable);
        File.ReadAllText(path).ShouldBe(Text);
    }

    [Fact]
    public void A_pdf_is_not_thrown_at_a_terminal()
    {
        var ran = Ran.With(Text, "print", "directory", "-", "--format", "pdf");
        (ran.Code, ran.Out).ShouldBe((ExitCode.Unusable, ""));
    }

    [Fact]
    public void All_of_them_go_into_a_folder_under_names_of_their_own()
    {
        using var folder = new TempFolder();
        var permit = folder.File("permit");
        Ran.With(SheetCases.TextNamed("../../etc/x"), "print", "all", "-", "-o", permit).Code.ShouldBe(ExitCode.Clean);
        string[] some = ["diagram.svg", "directory.pdf", "loads.csv", "parts.csv"];
        some.ShouldBeSubsetOf(Directory.GetFiles(permit).Select(Path.GetFileName)!);
    }

    [Fact]
    public void With_one_of_them_there_none_is_written()
    {
        using var folder = new TempFolder();
        var there = folder.File("plots.csv", "mine");
        Ran.With(Text, "print", "all", "-", "-o", Path.GetDirectoryName(there)!).Code.ShouldBe(ExitCode.Unusable);
        Directory.GetFiles(Path.GetDirectoryName(there)!).Length.ShouldBe(1);
    }

    [Theory]
    [InlineData("print diretory -", "did you mean directory")]
    [InlineData("print directory - --format doc", "There is text, markdown")]
    [InlineData("print directory - --paper a5", "There is letter, a4")]
    [InlineData("print labels - --tape 10", "There is 9, 12, 18, 24")]
    [InlineData("print directory - -o door.doc", "tells no format")]
    [InlineData("print diagram - --format csv", "there is no csv of diagram")]
    [InlineData("print all -", "name it with '-o'")]
    public void What_is_not_understood_is_said_in_a_line(string line, string says)
    {
        var ran = Ran.With(Text, line.Split(' '));
        ran.Code.ShouldBe(ExitCode.Unusable);
        ran.Error.ShouldContain(says);
        ran.Out.ShouldBe("");
    }
}
