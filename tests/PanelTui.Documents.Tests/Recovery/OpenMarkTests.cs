using System.Diagnostics;
using System.Runtime.Versioning;
using PanelTui.Documents.Recovery;
using PanelTui.Documents.Tests.Files;

namespace PanelTui.Documents.Tests.Recovery;

/// <summary>What a second editor sees on the file itself, without a state folder in common.</summary>
[SupportedOSPlatform("linux")]
public class OpenMarkTests : TestFolder
{
    [Fact]
    public void The_second_editor_sees_the_first_by_its_process()
    {
        using var first = OpenMark.Take(Schedule);
        using var second = OpenMark.Take(Schedule);
        first.Other.ShouldBeNull();
        second.Other.ShouldBe(Owner.Here);
    }

    [Fact]
    public void An_editor_that_has_ended_is_not_seen()
    {
        OpenMark.Take(Schedule).Dispose();
        using var next = OpenMark.Take(Schedule);
        next.Other.ShouldBeNull();
    }

    [Theory]
    [InlineData("hard")]
    [InlineData("-s")]
    public void Another_name_of_the_file_is_the_same_file(string kind)
    {
        using (var ln = Process.Start("ln", kind == "hard" ? [Schedule, PathOf("b.yaml")] : [kind, Schedule, PathOf("b.yaml")])) ln.WaitForExit();
        using var first = OpenMark.Take(Schedule);
        using var second = OpenMark.Take(PathOf("b.yaml"));
        second.Other.ShouldNotBeNull();
    }

    [Fact]
    public void After_a_save_that_puts_a_new_file_there_the_new_file_is_marked()
    {
        var first = OpenMark.Take(Schedule);
        Resave(Schedule, "a: 2\n");
        first = first.On(Schedule);
        using (var second = OpenMark.Take(Schedule)) second.Other.ShouldNotBeNull();
        first.On(Schedule).ShouldBeSameAs(first, "the file is the same as before");
        first.Dispose();
        using var third = OpenMark.Take(Schedule);
        third.Other.ShouldBeNull();
    }

    [Fact]
    public void A_file_that_may_only_be_read_is_marked_as_well()
    {
        File.SetUnixFileMode(Schedule, UnixFileMode.UserRead);
        using var first = OpenMark.Take(Schedule);
        using var second = OpenMark.Take(Schedule);
        second.Other.ShouldNotBeNull();
    }

    [Fact]
    public void A_mark_keeps_no_program_from_reading_writing_or_removing_the_file()
    {
        using var mark = OpenMark.Take(Schedule);
        using (File.Open(Schedule, FileMode.Open, FileAccess.ReadWrite, FileShare.None)) { }
        Resave(Schedule, "a: 3\n");
        File.Delete(Schedule);
        Names().ShouldBeEmpty();
    }

    [Fact]
    public void Where_there_is_no_file_nobody_is_seen()
    {
        using var mark = OpenMark.Take(PathOf("none.yaml"));
        mark.Other.ShouldBeNull();
        mark.On(PathOf("none.yaml")).ShouldBeSameAs(mark);
    }

    private string Schedule => File.Exists(PathOf("a.yaml")) ? PathOf("a.yaml") : Write("a.yaml", "a: 1\n");
}
