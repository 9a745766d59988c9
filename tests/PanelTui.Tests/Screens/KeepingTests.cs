using System.Collections.Concurrent;
using PanelTui.Documents.Files;
using PanelTui.Documents.Recovery;
using PanelTui.Documents.Text;
using PanelTui.Editing;
using PanelTui.Terminal;
using Terminal.Gui.Input;

namespace PanelTui.Tests.Screens;

/// <summary>When unsaved work is written to the state folder, and when not.</summary>
public sealed class KeepingTests : IDisposable
{
    private readonly OpenEditor _editor = new();
    private readonly TempFolder _state = new();
    private readonly HandClock _clock = new();
    private readonly Keeping _keeping;

    public KeepingTests() => _keeping = new Keeping(_editor.Session, State, _clock, action => action());

    [Fact]
    public void A_change_wakes_the_keeping_once_within_two_seconds()
    {
        _editor.Press(Key.D);
        Journals.ShouldBeEmpty("no key waits for a disk");
        _clock.Waits.ShouldBe([TimeSpan.FromSeconds(1)]);
        _editor.GoTo("2").Press(Key.D);
        _clock.Waits.Count.ShouldBe(1, "typing on puts the writing off no further");
        _clock.Ring();
        Kept.ShouldBe(_editor.Session.Now.Source.Text);
    }

    [Fact]
    public void Walking_about_wakes_nothing()
    {
        _editor.Press(Key.CursorDown, Key.CursorRight, Key.F.WithShift, Key.Esc);
        _clock.Waits.ShouldBeEmpty();
    }

    [Fact]
    public void What_is_typed_in_a_form_is_kept_before_the_form_is_sent()
    {
        _editor.GoTo("1").Press(Key.Enter).Type("Barn ");
        _clock.Ring();
        Kept.ShouldContain("Barn");
        _editor.Press(Key.Esc);
        _clock.Ring();
        Journals.ShouldBeEmpty("the form was given up");
    }

    [Fact]
    public void A_breaker_in_the_hand_is_kept_where_it_was()
    {
        _editor.GoTo("1").Press(Key.Space, Key.CursorDown, Key.CursorDown, Key.CursorDown);
        _clock.Ring();
        Journals.ShouldBeEmpty();
    }

    [Fact]
    public void Undoing_to_the_saved_state_removes_what_was_kept()
    {
        _editor.Press(Key.D);
        _clock.Ring();
        Journals.Length.ShouldBe(1);
        _editor.Press(Key.U);
        _clock.Ring();
        Journals.ShouldBeEmpty();
    }

    [Fact]
    public void Saving_removes_what_was_kept()
    {
        _editor.Press(Key.D);
        _clock.Ring();
        _editor.Press(Key.S.WithCtrl);
        _clock.Ring();
        Journals.ShouldBeEmpty();
    }

    [Fact]
    public void A_fault_in_the_program_keeps_the_work_at_once()
    {
        _editor.Press(Key.D);
        var ending = new Ending(EndingCause.Crash, fault: new InvalidOperationException());
        _keeping.End(ending);
        Kept.ShouldBe(_editor.Session.Now.Source.Text);
        ending.Note.ShouldBe($"The changes that were not saved are kept: 'paneltui {_editor.File}' offers them.");
    }

    [Fact]
    public void What_the_user_has_given_up_is_not_written_by_a_timer_that_rings_late()
    {
        _editor.Press(Key.D);
        _keeping.End(new Ending(EndingCause.Quit));
        _clock.Ring();
        Journals.ShouldBeEmpty();
    }

    [Fact]
    public void That_work_cannot_be_kept_is_told_once()
    {
        _keeping.Dispose();
        using var keeping = new Keeping(_editor.Session, new StateFolder("/proc/none"), _clock, action => action());
        _editor.Press(Key.D);
        _clock.Ring();
        _editor.Session.Message.ShouldStartWith("Unsaved work cannot be kept in /proc/none: ");
        _editor.GoTo("2").Press(Key.D);
        _clock.Ring();
        _editor.Session.Message.ShouldStartWith("Done: ");
    }

    [Theory]
    [InlineData(true, "changed by another program. ^S asks what to do: merge, reload or save elsewhere")]
    [InlineData(false, "deleted by another program. ^S asks what to do: write it again or save elsewhere")]
    public void Where_nothing_can_be_watched_another_program_s_change_is_told_after_the_next_change(bool exists, string what)
    {
        if (exists) File.WriteAllText(_editor.File, Shed.Text + "# theirs\n");
        else File.Delete(_editor.File);
        _editor.Press(Key.D);
        _clock.Ring();
        _editor.Session.Message.ShouldBe($"{_editor.File} has been {what}");
        _editor.GoTo("2").Press(Key.D);
        _clock.Ring();
        _editor.Session.Message.ShouldStartWith("Done: ", Case.Sensitive, "once is enough");
    }

    [Fact]
    public void A_save_writes_the_journal_before_it_touches_the_file()
    {
        var kept = "";
        _editor.Press(Key.D);
        _editor.Session.Saving += () => kept = Kept;
        _editor.Press(Key.S.WithCtrl);
        kept.ShouldBe(_editor.OnDisk);
    }

    [Fact]
    public void A_save_of_one_s_own_is_no_change_by_another_program()
    {
        using var screen = new BlockingCollection<Action>();
        using var keeping = new Keeping(_editor.Session, State, _clock, screen.Add);
        var said = new List<string>();
        _editor.Session.Changed += () => said.Add(_editor.Session.Message);
        keeping.Watch();
        _editor.Press(Key.D, Key.S.WithCtrl);
        File.Delete(_editor.File);
        while (!said.Exists(message => message.Contains("has been deleted", StringComparison.Ordinal))) screen.Take(TestContext.Current.CancellationToken)();
        said.ShouldNotContain(message => message.Contains("has been changed", StringComparison.Ordinal));
    }

    [Fact]
    public void A_file_that_comes_back_as_it_was_is_said_to_be_so()
    {
        _editor.Session.Notice(DiskState.Missing);
        _editor.Session.Newer.ShouldBe(DiskState.Missing);
        _editor.Session.Notice(ScheduleFile.Look(_editor.File));
        _editor.Session.Newer.ShouldBeNull();
        _editor.Session.Message.ShouldEndWith("is on the disk again as it was");
    }

    [Fact]
    public void A_save_goes_on_where_no_work_can_be_kept()
    {
        using var keeping = new Keeping(_editor.Session, StateFolder.Nowhere, _clock, action => action());
        _editor.Press(Key.D, Key.S.WithCtrl);
        _editor.OnDisk.ShouldBe(_editor.Session.Now.Source.Text);
    }

    public void Dispose()
    {
        _keeping.Dispose();
        _editor.Dispose();
        _state.Dispose();
    }

    private StateFolder State => new(_state.File("paneltui"));

    private string[] Journals =>
        Directory.Exists(State.Root) ? Directory.GetFiles(State.Root, "*.journal", SearchOption.AllDirectories) : [];

    /// <summary>What a later run would find.</summary>
    private string Kept
    {
        get
        {
            var journal = Journals.ShouldHaveSingleItem();
            var copy = File.ReadAllText(journal);
            File.WriteAllText(journal, copy.Replace($"\"started\":{Owner.Here.Started}", "\"started\":1", StringComparison.Ordinal));
            return UnsavedWork.Of(State, _editor.File, SourceText.FromString(Shed.Text)).ShouldHaveSingleItem().Text.Text;
        }
    }
}
