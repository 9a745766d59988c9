using System.Diagnostics;
using PanelTui.Documents.Files;

namespace PanelTui.Documents.Tests.Files;

/// <summary>A small file system in memory that fills up; needs the right to mount one.</summary>
[Collection("state folder")]
public class FullDiskTests : TestFolder
{
    private readonly bool _isMounted;
    private readonly string? _state = Environment.GetEnvironmentVariable("XDG_STATE_HOME");

    public FullDiskTests() => _isMounted = Run("mount", "-t", "tmpfs", "-o", "size=64k", "none", Folder);

    [Fact]
    public void A_full_disk_leaves_the_old_file_and_says_so()
    {
        Assert.SkipUnless(_isMounted, "this user may not mount a small disk");
        var path = Write("a.yaml", "a: 1\n");
        var refused = Refused(path, string.Concat(Enumerable.Repeat("# fill\n", 12_000)), ScheduleFile.Look(path));
        refused.Fault.ShouldBe(FileFault.DiskFull);
        refused.Message.ShouldBe($"{path} cannot be saved: the disk is full. The file on disk is unchanged.");
        File.ReadAllText(path).ShouldBe("a: 1\n");
        Names().ShouldBe(["a.yaml"]);
        Resave(path, "a: 2\n");
        File.ReadAllText(path).ShouldBe("a: 2\n");
    }

    [Fact]
    public void A_full_disk_leaves_a_file_with_several_names_as_it_was()
    {
        Assert.SkipUnless(_isMounted, "this user may not mount a small disk");
        var path = Write("a.yaml", "a: 1\n");
        Run("ln", path, PathOf("b.yaml")).ShouldBeTrue();
        Environment.SetEnvironmentVariable("XDG_STATE_HOME", Path.GetTempPath());
        Refused(path, string.Concat(Enumerable.Repeat("# fill\n", 12_000)), ScheduleFile.Look(path)).Message.ShouldBe(
            $"{path} cannot be saved: the disk is full. The file on disk is unchanged.");
        File.ReadAllText(PathOf("b.yaml")).ShouldBe("a: 1\n");
    }

    [Fact]
    public void A_disk_that_has_become_read_only_is_told()
    {
        Assert.SkipUnless(_isMounted, "this user may not mount a small disk");
        var path = Write("a.yaml", "a: 1\n");
        Run("mount", "-o", "remount,ro", Folder).ShouldBeTrue();
        Refused(path, "a: 2\n", ScheduleFile.Look(path)).Message.ShouldBe(
            $"{path} cannot be saved: the disk is mounted read-only. The file on disk is unchanged.");
        File.ReadAllText(path).ShouldBe("a: 1\n");
    }

    protected override void Dispose(bool isDisposing)
    {
        if (_isMounted) Run("umount", Folder);
        Environment.SetEnvironmentVariable("XDG_STATE_HOME", _state);
        base.Dispose(isDisposing);
    }

    private static bool Run(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true })!;
        process.WaitForExit();
        return process.ExitCode == 0;
    }
}
