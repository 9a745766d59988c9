using System.Runtime.Versioning;
using PanelTui.Documents.Files;
using PanelTui.Documents.Tests.Files;
using PanelTui.Tests.Terminal;

namespace PanelTui.Tests.Saving;

/// <summary>System calls of a save that fail, made to by strace: the file stays whole, and the user is told.</summary>
public sealed class FailingDiskTests : TerminalTests
{
    private string Schedule => Path.Combine(Folder, "shed.yaml");

    [Theory]
    [InlineData("fsync:error=EIO:when=1")]
    [InlineData("fsync:error=ENOSPC:when=1")]
    [InlineData("pwrite64:error=ENOSPC:when=1")]
    [InlineData("pwrite64:error=EDQUOT:when=1")]
    [InlineData("pwrite64:error=EFBIG:when=1")]
    [InlineData("rename:error=EIO:when=1")]
    public void A_step_that_fails_leaves_the_old_file_and_is_told(string fault)
    {
        var said = SaveUnder(fault);
        said.ShouldContain("cannot be saved: ");
        said.ShouldContain("The file on disk is unchanged.");
        File.ReadAllText(Schedule).ShouldBe(SaveLoop.Version(0));
        Directory.GetFiles(Folder).ShouldBe([Schedule]);
    }

    [Fact]
    public void A_folder_that_the_disk_does_not_confirm_is_no_failure_of_the_save()
    {
        SaveUnder("fsync:error=EIO:when=2").ShouldStartWith("1");
        File.ReadAllText(Schedule).ShouldBe(SaveLoop.Version(1));
    }

    [Fact]
    public void A_call_that_a_signal_interrupts_is_made_again()
    {
        SaveUnder("fsync:error=EINTR:when=1").ShouldStartWith("1");
        File.ReadAllText(Schedule).ShouldBe(SaveLoop.Version(1));
    }

    [Theory]
    [InlineData("pwrite64:signal=SIGKILL:when=1")]
    [InlineData("fsync:signal=SIGKILL:when=1")]
    [InlineData("rename:signal=SIGKILL:when=1")]
    [InlineData("fsync:signal=SIGKILL:when=2")]
    public void Killed_at_a_call_the_file_is_the_old_one_or_the_new_one(string kill)
    {
        SaveUnder(kill);
        SaveLoop.IsWhole(File.ReadAllText(Schedule)).ShouldBeTrue();
    }

    [Fact]
    [SupportedOSPlatform("linux")]
    public void A_file_whose_attributes_a_new_one_cannot_have_is_written_in_place()
    {
        File.WriteAllText(Schedule, SaveLoop.Version(0));
        Assert.SkipUnless(Attributes.TrySet(Schedule, "user.note", [1]), "this file system keeps no attributes");
        var inode = ScheduleFile.Look(Schedule).Inode;
        SaveUnder("fsetxattr:error=EPERM").ShouldStartWith("1");
        File.ReadAllText(Schedule).ShouldBe(SaveLoop.Version(1));
        Attributes.Of(Schedule, "user.note").ShouldBe([1]);
        ScheduleFile.Look(Schedule).Inode.ShouldBe(inode);
        Directory.GetFiles(Folder).ShouldBe([Schedule]);
    }

    [Fact]
    public void A_user_s_size_limit_leaves_the_old_file_and_is_told()
    {
        // The runtime's own memory files are under the limit, too, unless it is told to do without.
        Assert.SkipUnless(OperatingSystem.IsLinux(), "prlimit is a program of Linux");
        File.WriteAllText(Schedule, SaveLoop.Version(0));
        var said = Finished.Of("/usr/bin/env", "DOTNET_EnableWriteXorExecute=0", "/usr/bin/prlimit", "--fsize=8192", Tests, SaveLoop.Argument, Schedule, "1").Out;
        said.ShouldContain("cannot be saved: your limit on this disk (quota or size of a file) is reached. The file on disk is unchanged.");
        File.ReadAllText(Schedule).ShouldBe(SaveLoop.Version(0));
        Directory.GetFiles(Folder).ShouldBe([Schedule]);
    }

    private string SaveUnder(string fault)
    {
        Strace.IsWanted();
        if (!File.Exists(Schedule)) File.WriteAllText(Schedule, SaveLoop.Version(0));
        var call = fault.Split(':')[0];
        var strace = Finished.Of(
            "/usr/bin/strace",
            "-f", "-qq", "-o", "/dev/null", "-e", $"trace={call}", "-e", $"inject={fault}", Tests, SaveLoop.Argument, Schedule, "1");
        strace.Error.ShouldNotContain("PTRACE");
        return strace.Out;
    }
}
