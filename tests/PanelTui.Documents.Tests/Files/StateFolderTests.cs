using System.Diagnostics;
using System.Runtime.Versioning;
using PanelTui.Documents.Files;
using PanelTui.Documents.Recovery;

namespace PanelTui.Documents.Tests.Files;

[UnsupportedOSPlatform("windows")]
public class StateFolderTests : TestFolder
{
    /// <summary>
    /// XDG Base Directory Specification 0.8: relative paths are invalid and ignored, empty means not set.
    /// </summary>
    [Theory]
    [InlineData("/var/lib/state", "/home/ada", "/var/lib/state/paneltui")]
    [InlineData("state", "/home/ada", "/home/ada/.local/state/paneltui")]
    [InlineData("./state", "/home/ada", "/home/ada/.local/state/paneltui")]
    [InlineData("", "/home/ada", "/home/ada/.local/state/paneltui")]
    [InlineData(null, "/home/ada", "/home/ada/.local/state/paneltui")]
    [InlineData(null, "", "")]
    [InlineData("state", "", "")]
    [InlineData("", "home", "")]
    public void State_is_kept_below_an_absolute_path_or_nowhere(string? stateHome, string home, string root) =>
        StateFolder.Of(stateHome, home).Root.ShouldBe(root);

    [Fact]
    public void Without_a_home_work_is_kept_nowhere_and_a_sentence_says_so()
    {
        var problem = Should.Throw<FileProblem>(() => EditLock.Take(StateFolder.Nowhere, PathOf("a.yaml")));
        problem.Message.ShouldBe(
            "Unsaved work cannot be kept: there is no home folder, and XDG_STATE_HOME is not set to an absolute path. Save often.");
        new LastPlace(StateFolder.Nowhere).Keep(PathOf("a.yaml"), "3");
        Names().ShouldBeEmpty();
    }

    [Theory]
    [InlineData("state/paneltui", "777")]
    [InlineData("state/paneltui", "770")]
    [InlineData("state/paneltui/recovery", "702")]
    [InlineData("state", "777")]
    public void A_folder_that_others_may_write_is_refused(string folder, string mode)
    {
        MakeWith(folder, mode);
        Refusal().ShouldBe($"Unsaved work cannot be kept: others may write in {PathOf(folder)}. Run 'chmod 700' on it if it is yours. Save often.");
    }

    [Fact]
    public void A_folder_that_others_may_only_look_into_is_closed_to_them()
    {
        MakeWith("state/paneltui", "755");
        using (EditLock.Take(State, PathOf("a.yaml"))) { }
        File.GetUnixFileMode(State.Root).ShouldBe(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }

    [Fact]
    public void A_common_folder_in_which_nobody_can_rename_another_s_is_taken()
    {
        MakeWith("state", "1777");
        using (EditLock.Take(State, PathOf("a.yaml"))) { }
        Directory.Exists(State.Root).ShouldBeTrue();
    }

    [Theory]
    [InlineData("state/paneltui")]
    [InlineData("state")]
    public void A_folder_of_another_user_is_refused(string folder)
    {
        Assert.SkipUnless(Environment.IsPrivilegedProcess, "a folder of another user cannot be made here");
        MakeWith(folder, "700");
        using (var chown = Process.Start("chown", ["65534", PathOf(folder)])) chown.WaitForExit();
        Refusal().ShouldBe(
            $"Unsaved work cannot be kept: {PathOf(folder)} belongs to another user. Set XDG_STATE_HOME to a folder of your own. Save often.");
    }

    private StateFolder State => new(PathOf("state/paneltui"));

    private string Refusal() => Should.Throw<FileProblem>(() => EditLock.Take(State, PathOf("a.yaml"))).Message;

    private void MakeWith(string folder, string mode)
    {
        for (var above = PathOf(folder); above != Folder; above = Path.GetDirectoryName(above)!)
            Directory.CreateDirectory(above, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        using var chmod = Process.Start("chmod", [mode, PathOf(folder)]);
        chmod.WaitForExit();
    }
}
