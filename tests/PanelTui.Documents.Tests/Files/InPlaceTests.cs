using System.Diagnostics;
using System.Runtime.Versioning;
using PanelTui.Documents.Files;

namespace PanelTui.Documents.Tests.Files;

/// <summary>
/// Files that cannot be replaced by a new one are written in place, with a copy of the old version kept meanwhile.
/// </summary>
[Collection("state folder")]
[UnsupportedOSPlatform("windows")]
public class InPlaceTests : TestFolder
{
    private readonly string? _state = Environment.GetEnvironmentVariable("XDG_STATE_HOME");

    public InPlaceTests() => Environment.SetEnvironmentVariable("XDG_STATE_HOME", PathOf("state"));

    [Theory]
    [InlineData("a: 22222\n")]
    [InlineData("a\n")]
    public void A_hard_link_keeps_naming_the_same_file(string text)
    {
        var path = Linked("a.yaml", "b.yaml");
        var saved = Resave(path, text);
        File.ReadAllText(PathOf("b.yaml")).ShouldBe(text);
        saved.Note.ShouldBe($"{path} was written in place, since it has other names (hard links); a power cut at that moment could have damaged it.");
        saved.State.ShouldBe(ScheduleFile.Look(path));
        Directory.GetFiles(PathOf("state"), "*", SearchOption.AllDirectories).ShouldBeEmpty();
    }

    [Fact]
    public void Without_room_for_a_copy_the_file_is_not_touched()
    {
        var path = Linked("a.yaml", "b.yaml");
        Environment.SetEnvironmentVariable("XDG_STATE_HOME", "/proc/none");
        var refused = Refused(path, "a: 2\n", ScheduleFile.Look(path));
        refused.Message.ShouldStartWith($"{path} can only be written in place, and there is no room for a copy of it in ");
        refused.Message.ShouldEndWith(" The file on disk is unchanged.");
        File.ReadAllText(path).ShouldBe("a: 1\n");
    }

    [Fact]
    public void A_file_in_a_folder_that_takes_no_new_file_is_written_in_place()
    {
        var path = Write("a.yaml", "a: 1\n");
        var state = Directory.CreateTempSubdirectory("paneltui-state");
        Environment.SetEnvironmentVariable("XDG_STATE_HOME", state.FullName);
        File.SetUnixFileMode(Folder, UnixFileMode.UserRead | UnixFileMode.UserExecute);
        using (OrdinaryUser.Owning(Folder, path, state.FullName)) Resave(path, "a: 2\n").Note.ShouldNotBeNull();
        File.SetUnixFileMode(Folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        File.ReadAllText(path).ShouldBe("a: 2\n");
        state.Delete(recursive: true);
    }

    protected override void Dispose(bool isDisposing)
    {
        Environment.SetEnvironmentVariable("XDG_STATE_HOME", _state);
        base.Dispose(isDisposing);
    }

    private string Linked(string name, string other)
    {
        using var ln = Process.Start("ln", [Write(name, "a: 1\n"), PathOf(other)]);
        ln.WaitForExit();
        return PathOf(name);
    }
}
