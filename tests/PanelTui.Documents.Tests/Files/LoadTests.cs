using System.Diagnostics;
using PanelTui.Documents.Files;
using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.Documents.Tests.Files;

public class LoadTests : TestFolder
{
    [Theory]
    [InlineData("a: 1\n")]
    [InlineData("\uFEFFa: 1\r\nb: 2\r")]
    [InlineData("")]
    [InlineData("# no final break")]
    public void What_is_read_and_saved_again_is_the_same_to_the_byte(string text)
    {
        var path = Write("a.yaml", text);
        var before = File.ReadAllBytes(path);
        var loaded = ScheduleFile.Load(path);
        ScheduleFile.Save(path, loaded.Source, loaded.State);
        File.ReadAllBytes(path).ShouldBe(before);
    }

    [Fact]
    public void A_missing_file_is_named() =>
        Problem(PathOf("none.yaml")).Message.ShouldBe($"There is no file {PathOf("none.yaml")}.");

    [Fact]
    public void A_folder_is_no_file() => Problem(Folder).Message.ShouldBe($"{Folder} is a folder, not a file.");

    [Fact]
    public void A_device_is_no_file() => Problem("/dev/zero").Message.ShouldBe("/dev/zero is a pipe or a device, not a file.");

    [Fact]
    public void A_file_that_the_kernel_makes_up_is_refused_unread_also_through_a_link()
    {
        Assert.SkipUnless(File.Exists("/proc/kmsg"), "needs Linux");
        File.CreateSymbolicLink(PathOf("log.yaml"), "/proc/kmsg");
        foreach (var path in (string[])["/proc/kmsg", "/proc/self/status", PathOf("log.yaml")])
            Problem(path).Message.ShouldBe($"{path} is a file that the system makes up when it is read, not a file on a disk.");
        ScheduleFile.Load(Write("empty.yaml", "")).Source.Text.ShouldBeEmpty();
    }

    [Fact]
    public void A_pipe_is_refused_without_waiting_for_a_writer()
    {
        using (var mkfifo = Process.Start("mkfifo", PathOf("pipe"))) mkfifo.WaitForExit();
        Problem(PathOf("pipe")).Fault.ShouldBe(FileFault.NotAFile);
    }

    [Fact]
    public void A_file_larger_than_any_schedule_is_refused()
    {
        File.WriteAllBytes(PathOf("big.yaml"), new byte[TextLimits.Bytes + 1]);
        Problem(PathOf("big.yaml")).Message.ShouldBe($"{PathOf("big.yaml")} is larger than 4 MiB, which no schedule is.");
    }

    [Fact]
    public void Links_in_a_circle_are_told()
    {
        File.CreateSymbolicLink(PathOf("a"), PathOf("b"));
        File.CreateSymbolicLink(PathOf("b"), PathOf("a"));
        Should.Throw<FileProblem>(() => ScheduleFile.Load(PathOf("a"))).Message.ShouldContain("circle");
    }

    [Fact]
    public void A_file_that_is_no_text_is_a_problem_of_the_text_with_its_place()
    {
        File.WriteAllBytes(PathOf("latin.yaml"), [(byte)'a', (byte)':', (byte)' ', 0xFC, (byte)'\n']);
        Should.Throw<YamlProblem>(() => ScheduleFile.Load(PathOf("latin.yaml"))).Position.ShouldBe(new(1, 4));
    }

    [Fact]
    public void A_name_with_a_null_character_is_refused_with_a_sentence() =>
        Problem("a\0b").Fault.ShouldBe(FileFault.BadName);

    private static FileProblem Problem(string path) => Should.Throw<FileProblem>(() => ScheduleFile.Load(path));
}
