using System.Runtime.Versioning;
using PanelTui.Documents.Files;
using PanelTui.Documents.Text;

namespace PanelTui.Documents.Tests.Files;

[UnsupportedOSPlatform("windows")]
public class SaveTests : TestFolder
{
    [Fact]
    public void A_save_puts_a_whole_new_file_in_the_place_of_the_old_and_leaves_nothing_else()
    {
        var path = Write("a.yaml", "a: 1\n");
        var before = ScheduleFile.Look(path);
        var saved = Save(path, "a: 2\n", before);
        saved.State.Inode.ShouldNotBe(before.Inode);
        saved.State.ShouldBe(ScheduleFile.Look(path));
        saved.Note.ShouldBeNull();
        File.ReadAllText(path).ShouldBe("a: 2\n");
        Names().ShouldBe(["a.yaml"]);
    }

    [Fact]
    public void The_state_after_a_save_is_good_for_the_next_one()
    {
        var path = Write("a.yaml", "a: 1\n");
        var saved = Resave(path, "a: 2\n");
        Save(path, "a: 3\n", saved.State);
        File.ReadAllText(path).ShouldBe("a: 3\n");
    }

    [Fact]
    public void A_new_file_is_made_with_the_mode_that_the_user_s_mask_leaves()
    {
        Save(PathOf("new.yaml"), "a: 1\n", DiskState.Missing);
        File.WriteAllText(PathOf("other"), "");
        File.GetUnixFileMode(PathOf("new.yaml")).ShouldBe(File.GetUnixFileMode(PathOf("other")));
    }

    [Theory]
    [InlineData(0b110_100_000)]
    [InlineData(0b110_110_110)]
    [InlineData(0b111_101_101)]
    public void The_mode_is_kept(int mode)
    {
        var path = Write("a.yaml", "a: 1\n");
        File.SetUnixFileMode(path, (UnixFileMode)mode);
        Resave(path, "a: 2\n");
        File.GetUnixFileMode(path).ShouldBe((UnixFileMode)mode);
    }

    [Fact]
    public void A_symbolic_link_stays_one_and_the_file_behind_it_is_saved()
    {
        var real = Write("real.yaml", "a: 1\n");
        File.CreateSymbolicLink(PathOf("middle.yaml"), real);
        File.CreateSymbolicLink(PathOf("link.yaml"), "middle.yaml");
        Resave(PathOf("link.yaml"), "a: 2\n");
        new FileInfo(PathOf("link.yaml")).LinkTarget.ShouldBe("middle.yaml");
        File.ReadAllText(real).ShouldBe("a: 2\n");
    }

    [Fact]
    public void A_link_to_nothing_yet_makes_the_file_it_names()
    {
        File.CreateSymbolicLink(PathOf("link.yaml"), PathOf("real.yaml"));
        Save(PathOf("link.yaml"), "a: 1\n", DiskState.Missing);
        File.ReadAllText(PathOf("real.yaml")).ShouldBe("a: 1\n");
    }

    [Fact]
    public void A_long_name_can_be_saved_too()
    {
        var path = Write(new string('ä', 120) + ".yaml", "a: 1\n");
        Resave(path, "a: 2\n");
        File.ReadAllText(path).ShouldBe("a: 2\n");
    }

    [Fact]
    public void A_disk_that_does_not_take_the_bytes_is_heard()
    {
        using var file = File.OpenHandle("/dev/null", access: FileAccess.Write);
        Should.Throw<IOException>(() => Durable.Sync(file));
    }

    [Fact]
    public void A_text_that_could_not_be_read_again_is_not_saved()
    {
        var huge = string.Concat(Enumerable.Repeat("# comment\n", TextLimits.Bytes / 10 + 1));
        Refused(PathOf("a.yaml"), huge, DiskState.Missing).Fault.ShouldBe(FileFault.TooLarge);
        Names().ShouldBeEmpty();
    }
}
