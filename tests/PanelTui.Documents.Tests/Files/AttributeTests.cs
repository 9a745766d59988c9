using System.Runtime.Versioning;
using System.Text;
using PanelTui.Documents.Files;

namespace PanelTui.Documents.Tests.Files;

/// <summary>What a file has beside its bytes and its mode outlives a save.</summary>
[SupportedOSPlatform("linux")]
public class AttributeTests : TestFolder
{
    private const string None = "this file system keeps no such attributes";

    [Fact]
    public void An_attribute_is_kept()
    {
        var path = Write("a.yaml", "a: 1\n");
        var note = Encoding.UTF8.GetBytes("checked in March");
        Assert.SkipUnless(Attributes.TrySet(path, "user.note", note), None);
        Assert.SkipUnless(Attributes.TrySet(path, "user.empty", []), None);
        Replaced(path);
        Attributes.Of(path, "user.note").ShouldBe(note);
        Attributes.Of(path, "user.empty").ShouldBe([]);
    }

    [Fact]
    public void An_access_list_is_kept()
    {
        var path = Write("a.yaml", "a: 1\n");
        Assert.SkipUnless(Attributes.TrySet(path, Attributes.AccessList, Attributes.OpenTo(1234)), None);
        var mode = File.GetUnixFileMode(path);
        Replaced(path);
        Attributes.Of(path, Attributes.AccessList).ShouldBe(Attributes.OpenTo(1234));
        File.GetUnixFileMode(path).ShouldBe(mode);
    }

    [Fact]
    public void What_a_folder_gives_to_new_files_opens_no_old_one()
    {
        var path = Write("a.yaml", "a: 1\n");
        Assert.SkipUnless(Attributes.TrySet(Folder, Attributes.FolderDefault, Attributes.OpenTo(1234)), None);
        var mode = File.GetUnixFileMode(path);
        Replaced(path);
        Attributes.Of(path, Attributes.AccessList).ShouldBeNull();
        File.GetUnixFileMode(path).ShouldBe(mode);
    }

    [Fact]
    public void The_owner_is_kept()
    {
        Assert.SkipUnless(Environment.IsPrivilegedProcess, "only root may give a file away");
        var path = Write("a.yaml", "a: 1\n");
        using (var file = File.OpenHandle(path, access: FileAccess.Write)) LibC.TryGive(file, 1234, 2345).ShouldBeTrue();
        Replaced(path);
        var now = FileIdentity.Of(path).ShouldNotBeNull();
        (now.Owner, now.Group).ShouldBe((1234u, 2345u));
    }

    private static void Replaced(string path)
    {
        var before = ScheduleFile.Look(path);
        var saved = Resave(path, "a: 2\n");
        saved.Note.ShouldBeNull();
        saved.State.Inode.ShouldNotBe(before.Inode);
        File.ReadAllText(path).ShouldBe("a: 2\n");
    }
}
