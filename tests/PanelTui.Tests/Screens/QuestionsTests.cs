using Terminal.Gui.Input;

namespace PanelTui.Tests.Screens;

/// <summary>What the editor asks before it goes on: about unsaved work, another editor, a file that changed underneath.</summary>
public class QuestionsTests
{
    private static readonly string Wanted = Shed.Text.Replace("Well pump", "Barn pump", StringComparison.Ordinal);
    private static readonly string Theirs = Shed.Text.Replace("Bench receptacles", "Saw", StringComparison.Ordinal);

    [Fact]
    public void Unsaved_work_is_offered_with_its_time_and_what_it_would_change()
    {
        using var desk = WithUnsavedWork();
        Golden.ShouldMatch(desk.Editor.Screen, "unsaved-work-80x24");
    }

    [Fact]
    public void Work_that_is_taken_up_is_in_the_editor_unsaved_and_kept()
    {
        using var desk = WithUnsavedWork();
        desk.Editor.Press(Key.T);
        desk.Editor.Session.Now.Source.Text.ShouldBe(Wanted);
        desk.Editor.OnDisk.ShouldBe(Shed.Text);
        desk.Kept("*.journal").Length.ShouldBe(1, "that of this run, and no other");
        desk.Editor.Press(Key.U).Session.Now.Source.Text.ShouldBe(Shed.Text);
    }

    [Fact]
    public void Work_that_is_not_wanted_is_put_aside_and_not_offered_again()
    {
        using var desk = WithUnsavedWork();
        desk.Editor.Press(Key.K);
        desk.Editor.Session.Now.Source.Text.ShouldBe(Shed.Text);
        desk.Kept("*.journal").ShouldBeEmpty();
        File.ReadAllText(desk.Kept("*-shed.panel.yaml").ShouldHaveSingleItem()).ShouldBe(Wanted);
    }

    [Theory]
    [InlineData("l")]
    [InlineData("Esc")]
    public void The_answer_can_wait(string key)
    {
        using var desk = WithUnsavedWork();
        desk.Editor.Press(key == "l" ? Key.L : Key.Esc);
        desk.Kept("*.journal").Length.ShouldBe(1);
        desk.Editor.Press(Key.D).Session.IsSaved.ShouldBeFalse("the face has the keys again");
    }

    [Fact]
    public void Work_on_an_older_version_of_the_file_is_offered_with_a_warning()
    {
        using var desk = new DeskEditor((desk, path) => desk.Leave(path, Wanted), Theirs);
        desk.Editor.Screen.ShouldContain("The file has been changed since this work began.");
    }

    [Fact]
    public void Work_on_an_older_version_of_the_file_is_merged_with_what_the_file_has_become()
    {
        using var desk = new DeskEditor((desk, path) => desk.Leave(path, Wanted), Theirs);
        desk.Editor.Press(Key.M).Session.Now.Source.Text.ShouldBe(Wanted.Replace("Bench receptacles", "Saw", StringComparison.Ordinal));
        desk.Kept("*.journal").Length.ShouldBe(1, "that of this run, and no other");
        desk.Editor.Press(Key.U).Session.Now.Source.Text.ShouldBe(Theirs);
        desk.Editor.Session.IsSaved.ShouldBeTrue();
    }

    [Fact]
    public void What_the_work_and_the_file_dispute_is_settled_one_by_one()
    {
        var disputed = Shed.Text.Replace("Well pump", "Mill pump", StringComparison.Ordinal);
        using var desk = new DeskEditor((desk, path) => desk.Leave(path, Wanted), disputed);
        desk.Editor.Press(Key.M).Screen.ShouldContain("Changed on both sides: 0 of 1 settled");
        desk.Editor.Press(Key.M, Key.T).Session.Now.Source.Text.ShouldBe(Wanted);
        desk.Kept("*.journal").Length.ShouldBe(1);
        desk.Editor.Session.IsSaved.ShouldBeFalse();
    }

    [Fact]
    public void The_second_editor_on_a_file_is_told_and_only_looks()
    {
        using var desk = new DeskEditor((desk, path) => desk.LockElsewhere(path));
        Golden.ShouldMatch(desk.Editor.Screen, "open-elsewhere-80x24");
        desk.Editor.Press(Key.Esc, Key.D);
        desk.Editor.Session.Now.Source.Text.ShouldBe(Shed.Text);
        desk.Editor.Screen.ShouldContain("to look only");
    }

    [Fact]
    public void The_second_editor_edits_where_the_user_says_so()
    {
        using var desk = new DeskEditor((desk, path) => desk.LockElsewhere(path));
        desk.Editor.Press(Key.E, Key.D);
        desk.Editor.Session.Now.Source.Text.ShouldNotBe(Shed.Text);
    }

    [Fact]
    public void Saving_over_another_program_s_change_asks_first()
    {
        using var editor = ChangedUnderneath();
        editor.Press(Key.S.WithCtrl);
        Golden.ShouldMatch(editor.Screen, "changed-underneath-80x24");
        editor.OnDisk.ShouldBe(Theirs);
        editor.Press(Key.B).Session.IsSaved.ShouldBeFalse();
        editor.OnDisk.ShouldBe(Theirs);
    }

    [Fact]
    public void Reloading_takes_their_version_and_one_undo_brings_mine_back()
    {
        using var editor = ChangedUnderneath();
        var mine = editor.Session.Now.Source.Text;
        editor.Press(Key.S.WithCtrl, Key.R);
        editor.Session.Now.Source.Text.ShouldBe(Theirs);
        editor.Session.IsSaved.ShouldBeTrue();
        editor.Press(Key.U).Session.Now.Source.Text.ShouldBe(mine);
        editor.Session.IsSaved.ShouldBeFalse();
    }

    [Fact]
    public void Saving_elsewhere_leaves_their_version_where_it_is()
    {
        using var editor = ChangedUnderneath();
        var mine = editor.Session.Now.Source.Text;
        editor.Press(Key.S.WithCtrl, Key.W).Press([.. Enumerable.Repeat(Key.Backspace, editor.File.Length)]);
        editor.Type(editor.File + "2").Press(Key.Enter);
        editor.OnDisk.ShouldBe(Theirs);
        File.ReadAllText(editor.File + "2").ShouldBe(mine);
    }

    [Fact]
    public void Save_and_quit_does_not_quit_before_the_question_is_answered()
    {
        using var editor = ChangedUnderneath();
        editor.Press(Key.Q, Key.S);
        editor.HasEnded.ShouldBeFalse();
        editor.Screen.ShouldContain("has been changed by another program");
    }

    [Fact]
    public void A_file_deleted_underneath_is_written_anew_only_when_asked_for()
    {
        using var editor = new OpenEditor();
        File.Delete(editor.File);
        editor.Press(Key.D, Key.S.WithCtrl);
        File.Exists(editor.File).ShouldBeFalse();
        editor.Screen.ShouldContain("has been deleted on disk");
        editor.Press(Key.Y);
        editor.OnDisk.ShouldBe(editor.Session.Now.Source.Text);
    }

    [Fact]
    public void A_write_protected_file_is_told_at_the_start()
    {
        using var folder = new TempFolder();
        var file = folder.File("a.panel.yaml", Shed.Text);
        File.SetAttributes(file, FileAttributes.ReadOnly);
        Session.Open(file).Session!.Message.ShouldBe($"{file} is read-only: changes are saved under another name, with w");
    }

    [Fact]
    public void A_write_protected_file_keeps_the_work_and_says_what_can_be_done()
    {
        using var editor = new OpenEditor();
        File.SetAttributes(editor.File, FileAttributes.ReadOnly);
        editor.Press(Key.D, Key.S.WithCtrl);
        editor.Session.Message.ShouldEndWith("is write-protected and was not saved. The file on disk is unchanged. Press w to save it elsewhere.");
        editor.Session.IsSaved.ShouldBeFalse();
    }

    [Fact]
    public void Both_programs_changes_are_merged_and_saved_when_the_user_has_looked()
    {
        using var editor = ChangedUnderneath();
        editor.Press(Key.S.WithCtrl, Key.M).Screen.ShouldContain("Merged: look at it, then save");
        editor.Session.IsSaved.ShouldBeFalse();
        editor.OnDisk.ShouldBe(Theirs);
        editor.Session.Schedule.Circuits.ShouldNotContain(circuit => circuit.Id == "lights", "it was removed here");
        editor.Press(Key.S.WithCtrl).OnDisk.ShouldBe(editor.Session.Now.Source.Text);
        editor.Session.IsSaved.ShouldBeTrue();
        editor.Press(Key.U).Session.IsSaved.ShouldBeFalse();
    }

    [Fact]
    public void What_was_changed_on_both_sides_is_settled_one_by_one()
    {
        using var editor = new OpenEditor();
        editor.GoTo("2").Press(Key.Enter, Key.Tab).Type("25 A").Press(Key.Enter);
        File.WriteAllText(editor.File, Shed.Text.Replace("name: Well pump, breaker: 20 A", "name: Well pump, breaker: 30 A", StringComparison.Ordinal));
        editor.Press(Key.S.WithCtrl, Key.M);
        Golden.ShouldMatch(editor.Screen, "settle-80x24");
        editor.Press(Key.T).Screen.ShouldContain("1 of 1 are not settled yet");
        editor.Press(Key.O, Key.T).Session.Schedule.Circuits[1].Breaker.Rating.Value.ShouldBe(30);
        editor.Press(Key.U).Session.Schedule.Circuits[1].Breaker.Rating.Value.ShouldBe(25);
        editor.Session.IsSaved.ShouldBeFalse();
    }

    [Fact]
    public void What_changed_since_the_last_save_is_a_list_of_facts()
    {
        using var editor = new OpenEditor();
        editor.Press(Key.V).Screen.ShouldContain("Nothing.");
        editor.Press(Key.Esc, Key.D, Key.V);
        Golden.ShouldMatch(editor.Screen, "changes-80x24");
        editor.Press(Key.CursorRight).Screen.ShouldContain("The file is in no git repository");
        editor.Press(Key.Esc, Key.Q).Screen.ShouldContain("Not saved yet. Leave? Shed lights");
    }

    private static DeskEditor WithUnsavedWork() => new((desk, path) => desk.Leave(path, Wanted));

    private static OpenEditor ChangedUnderneath()
    {
        var editor = new OpenEditor();
        editor.Press(Key.D);
        File.WriteAllText(editor.File, Theirs);
        return editor;
    }
}
