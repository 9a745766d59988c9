using System.Runtime.Versioning;
using PanelTui.Documents.Files;
using PanelTui.Documents.Recovery;
using PanelTui.Documents.Text;
using PanelTui.Tests.Terminal;

namespace PanelTui.Tests.Saving;

/// <summary>
/// A change that is saved at once, by a process of its own: what is in the file, in the journal and on the screen.
/// </summary>
[UnsupportedOSPlatform("windows")]
public sealed class SavedEditTests : TerminalTests
{
    private const string Nobody = "65534";

    private readonly string _file;

    public SavedEditTests()
    {
        _file = Path.Combine(Directory.CreateDirectory(Path.Combine(Folder, "plans")).FullName, "shed.yaml");
        File.WriteAllText(_file, SavedEdit.Before);
    }

    private string State => Path.Combine(Folder, "state");

    [Theory]
    [InlineData("fsync:signal=SIGKILL:when=3")] // of the new file: the journal and its folder come first
    [InlineData("rename:signal=SIGKILL:when=1")]
    public void Killed_in_a_save_that_comes_right_after_the_change_the_change_is_in_the_journal(string kill)
    {
        Strace.IsWanted();
        var said = Run(
            "/usr/bin/strace", "-f", "-qq", "-o", "/dev/null", "-e", $"trace={kill.Split(':')[0]}", "-e", $"inject={kill}", Tests, SavedEdit.Argument, _file);
        said.Error.ShouldNotContain("PTRACE");
        said.Out.ShouldNotContain("saved:", Case.Sensitive, "it was killed before");
        File.ReadAllText(_file).ShouldBe(SavedEdit.Before);
        var kept = UnsavedWork.Of(new StateFolder(Path.Combine(State, "paneltui")), _file, SourceText.FromString(SavedEdit.Before));
        kept.ShouldHaveSingleItem().Text.Text.ShouldBe(SavedEdit.After);
    }

    [Theory]
    [InlineData("000")]
    [InlineData("027")]
    [InlineData("777")]
    public void Folders_of_the_state_are_for_the_user_alone_whatever_the_mask(string mask)
    {
        // The runtime's own files in the folder for temporary ones are under the mask, too, unless it is told to do
        // without.
        Run("/bin/sh", "-c", $"umask {mask}; DOTNET_EnableDiagnostics=0 exec \"$@\"", "sh", Tests, SavedEdit.Argument, _file);
        string[] made = [State, .. Directory.GetDirectories(State, "*", SearchOption.AllDirectories)];
        made.Length.ShouldBe(4, "state, paneltui, recovery, and that of the schedule");
        foreach (var folder in made)
            File.GetUnixFileMode(folder).ShouldBe(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute, folder);
    }

    [Fact]
    public void A_folder_that_takes_no_new_file_is_named_as_the_reason()
    {
        File.SetUnixFileMode(Path.GetDirectoryName(_file)!, UnixFileMode.UserRead | UnixFileMode.UserExecute | UnixFileMode.OtherRead | UnixFileMode.OtherExecute);
        try
        {
            RunAsNobodyWith(_file).Out.ShouldContain(
                $"saved: {_file} was written in place, since its folder takes no new file; a power cut at that moment could have damaged it.");
            File.ReadAllText(_file).ShouldBe(SavedEdit.After);
        }
        finally
        {
            File.SetUnixFileMode(Path.GetDirectoryName(_file)!, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    [Fact]
    public void A_file_of_another_user_that_may_not_be_written_is_said_at_the_start()
    {
        Assert.SkipUnless(Environment.IsPrivilegedProcess, "a file of another user cannot be made here");
        var said = RunAsNobodyWith();
        said.Out.ShouldContain($"opened: {_file} is read-only: changes are saved under another name, with w");
        said.Out.ShouldContain($"saved: {_file} cannot be saved: you have no permission for it or for its folder. The file on disk is unchanged.");
    }

    /// <summary>
    /// Root may write everywhere, so it steps down to a user who may read the tests; anyone else is one already.
    /// </summary>
    private Finished RunAsNobodyWith(params string[] own)
    {
        if (!Environment.IsPrivilegedProcess) return Run(Tests, SavedEdit.Argument, _file);
        Assert.SkipUnless(File.Exists("/usr/bin/setpriv"), "needs setpriv");
        File.SetUnixFileMode(Folder, (UnixFileMode)0b111_101_101);
        Directory.CreateDirectory(State, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        Finished.Of("/bin/chown", [Nobody, State, .. own]).Code.ShouldBe(0);
        string[] asNobody = ["--reuid", Nobody, "--regid", Nobody, "--clear-groups"];
        var canRead = Finished.Of("/usr/bin/setpriv", [.. asNobody, "/usr/bin/test", "-x", Tests]).Code == 0;
        Assert.SkipUnless(canRead, "the tests lie in a folder of their user's alone");
        return Run("/usr/bin/setpriv", [.. asNobody, Tests, SavedEdit.Argument, _file]);
    }

    private Finished Run(string program, params string[] arguments) =>
        Finished.Of("/usr/bin/env", [$"XDG_STATE_HOME={State}", program, .. arguments]);
}
