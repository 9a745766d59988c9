using PanelTui.Tests.Screens;
using Terminal.Gui.Input;
using InstalledGit = PanelTui.CommandLine.Git;

namespace PanelTui.Tests.Tasks;

/// <summary>Task 6: undo and redo anything; see what changed since the save and since the commit, in words.</summary>
public class SeeWhatChangedTests
{
    [Theory]
    [MemberData(nameof(TaskSizes.Both), MemberType = typeof(TaskSizes))]
    public void Undo_and_redo_take_one_key_each_and_the_change_is_told_in_words(int columns, int rows)
    {
        using var editor = new OpenEditor(columns: columns, rows: rows);
        editor.Press(Key.D, Key.V).Screen.ShouldContain("- Shed lights (space 1): removed (15 A, lighting 480 W)");
        editor.Press(Key.Esc, Key.U).Session.Now.Source.Text.ShouldBe(Shed.Text);
        editor.Press(Key.R).Session.Here.ShouldBeNull();
        editor.Presses.ShouldBe(5);
    }

    [Theory]
    [MemberData(nameof(TaskSizes.Both), MemberType = typeof(TaskSizes))]
    public void What_changed_since_the_last_commit_is_an_arrow_away(int columns, int rows)
    {
        using var editor = new OpenEditor(columns: columns, rows: rows);
        Committed(editor.File);
        editor.Press(Key.D, Key.S.WithCtrl, Key.V).Screen.ShouldContain("Nothing.");
        editor.Press(Key.CursorRight).Screen.ShouldContain("since the last commit");
        editor.Screen.ShouldContain("- Shed lights (space 1): removed");
    }

    [Fact]
    public void The_branch_and_that_the_file_is_not_committed_stand_in_the_heading()
    {
        using var editor = new OpenEditor();
        Committed(editor.File);
        editor.Session.Tell(GitPlace.Of(editor.File));
        editor.Press(Key.Esc).Screen.ShouldContain("shed.panel.yaml · orchard");
        editor.Screen.ShouldNotContain("uncommitted");
        editor.Press(Key.D, Key.S.WithCtrl).Screen.ShouldContain("shed.panel.yaml · orchard uncommitted");
    }

    private static void Committed(string file)
    {
        var folder = Path.GetDirectoryName(file)!;
        InstalledGit.Run(folder, "init", "-q", "-b", "orchard").Succeeded.ShouldBeTrue();
        InstalledGit.Run(folder, "add", "-A").Succeeded.ShouldBeTrue();
        InstalledGit.Run(folder, "-c", "user.name=Test", "-c", "user.email=test@example.org", "commit", "-q", "-m", "base").Succeeded.ShouldBeTrue();
    }
}
