using System.Diagnostics;
using System.Runtime.Versioning;
using PanelTui.Documents.Files;

namespace PanelTui.Documents.Tests.Files;

[UnsupportedOSPlatform("windows")]
public class SaveRefusedTests : TestFolder
{
    [Fact]
    public void A_file_that_another_program_changed_is_not_overwritten()
    {
        var path = Write("a.yaml", "a: 1\n");
        var expected = ScheduleFile.Look(path);
        var modified = File.GetLastWriteTimeUtc(path);
        File.WriteAllText(path, "a: 9\n");
        File.SetLastWriteTimeUtc(path, modified);
        Refused(path, "a: 2\n", expected).Message.ShouldBe(
            $"{path} has been changed by another program since it was read, and was not overwritten. The file on disk stays as that program left it.");
        File.ReadAllText(path).ShouldBe("a: 9\n");
        Names().ShouldBe(["a.yaml"]);
    }

    [Fact]
    public void Writing_the_same_bytes_again_is_no_change()
    {
        var path = Write("a.yaml", "a: 1\n");
        var expected = ScheduleFile.Look(path);
        File.Delete(path);
        Write("a.yaml", "a: 1\n");
        File.SetLastWriteTimeUtc(path, DateTime.UnixEpoch);
        Save(path, "a: 2\n", expected);
        File.ReadAllText(path).ShouldBe("a: 2\n");
    }

    [Fact]
    public void A_deleted_file_is_not_made_again_unasked()
    {
        var path = Write("a.yaml", "a: 1\n");
        var expected = ScheduleFile.Look(path);
        File.Delete(path);
        Refused(path, "a: 2\n", expected).Message.ShouldBe($"{path} has been deleted since it was read, and was not saved. Nothing on disk is changed.");
        Save(path, "a: 2\n", DiskState.Missing);
        File.ReadAllText(path).ShouldBe("a: 2\n");
    }

    [Fact]
    public void A_new_file_overwrites_none()
    {
        var path = Write("a.yaml", "a: 1\n");
        Refused(path, "a: 2\n", DiskState.Missing).Message.ShouldBe($"{path} exists already and was not overwritten. The file on disk is unchanged.");
        File.ReadAllText(path).ShouldBe("a: 1\n");
    }

    [Fact]
    public void A_write_protected_file_is_left_alone_even_by_root()
    {
        var path = Write("a.yaml", "a: 1\n");
        File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.GroupRead);
        ScheduleFile.Load(path).IsReadOnly.ShouldBeTrue();
        var refused = Refused(path, "a: 2\n", ScheduleFile.Look(path));
        refused.Fault.ShouldBe(FileFault.ReadOnly);
        refused.Message.ShouldBe($"{path} is write-protected and was not saved. The file on disk is unchanged.");
        File.ReadAllText(path).ShouldBe("a: 1\n");
    }

    [Fact]
    public void A_missing_folder_is_told()
    {
        var refused = Refused(PathOf("no/such/a.yaml"), "a: 2\n", DiskState.Missing);
        refused.Fault.ShouldBe(FileFault.NoSuchFolder);
        refused.Message.ShouldBe($"{PathOf("no/such/a.yaml")} cannot be saved: its folder does not exist. Nothing on disk is changed.");
    }

    [Fact]
    public void A_folder_is_not_saved_over() =>
        Refused(Folder, "a: 2\n", DiskState.Missing).Fault.ShouldBe(FileFault.NotAFile);

    [Fact]
    public void A_name_too_long_for_the_file_system_is_told() =>
        Refused(PathOf(new string('n', 300)), "a: 2\n", DiskState.Missing).Fault.ShouldBe(FileFault.BadName);

    [Fact]
    public void A_file_in_place_of_a_folder_is_told() =>
        Refused(Path.Combine(Write("a", ""), "b.yaml"), "a: 2\n", DiskState.Missing).Message.ShouldEndWith("its folder does not exist. Nothing on disk is changed.");

    [Fact]
    public void A_folder_that_went_away_keeps_the_work_from_being_lost_silently()
    {
        Directory.CreateDirectory(PathOf("plans"));
        var path = Write("plans/a.yaml", "a: 1\n");
        var expected = ScheduleFile.Look(path);
        Directory.Delete(PathOf("plans"), recursive: true);
        Refused(path, "a: 2\n", expected).Message.ShouldBe($"{path} has been deleted since it was read, and was not saved. Nothing on disk is changed.");
        Refused(path, "a: 2\n", DiskState.Missing).Message.ShouldBe($"{path} cannot be saved: its folder does not exist. Nothing on disk is changed.");
    }

    [Fact]
    public void A_folder_that_took_the_file_s_place_is_told()
    {
        var path = Write("a.yaml", "a: 1\n");
        var expected = ScheduleFile.Look(path);
        File.Delete(path);
        Directory.CreateDirectory(path);
        Refused(path, "a: 2\n", expected).Message.ShouldBe($"{path} is a folder, not a file. Nothing on disk is changed.");
        Directory.GetFileSystemEntries(path).ShouldBeEmpty();
        Names().ShouldBe(["a.yaml"]);
    }

    [Fact]
    public void A_pipe_that_took_the_file_s_place_is_told_without_waiting_for_a_reader()
    {
        var path = Write("a.yaml", "a: 1\n");
        var expected = ScheduleFile.Look(path);
        File.Delete(path);
        using (var mkfifo = Process.Start("mkfifo", path)) mkfifo.WaitForExit();
        Refused(path, "a: 2\n", expected).Fault.ShouldBe(FileFault.NotAFile);
    }

    [Fact]
    public void A_device_is_not_written_to() =>
        Refused("/dev/null", "a: 2\n", DiskState.Missing).Fault.ShouldBe(FileFault.NotAFile);
}
