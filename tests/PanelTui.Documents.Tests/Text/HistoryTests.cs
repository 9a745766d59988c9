using CsCheck;
using PanelTui.Documents.Text;

namespace PanelTui.Documents.Tests.Text;

public class HistoryTests
{
    [Fact]
    public void Undo_and_redo_walk_through_every_version() => Gen.Int[0, 9].Array[1, 30].Sample(steps =>
    {
        var history = new History("");
        var versions = new List<string> { "" };
        foreach (var step in steps)
        {
            history.Make(Append($"{step}"));
            versions.Add(history.Text);
        }

        var back = Walk(versions.Count - 1, history.Undo, history);
        var forth = Walk(versions.Count - 1, history.Redo, history);
        return back.SequenceEqual(Enumerable.Reverse(versions).Skip(1)) && forth.SequenceEqual(versions.Skip(1))
            && history.RedoTitle is null && history.UndoTitle is not null;
    });

    [Theory]
    [InlineData("", 0)]
    [InlineData("+", 1)]
    [InlineData("++", 2)]
    [InlineData("++-", 1)]
    [InlineData("++S+", 1)]
    [InlineData("++S--", 2)]
    [InlineData("++S-", 1)]
    [InlineData("++S-+", 2)]
    [InlineData("++S--r", 1)]
    public void The_steps_from_the_saved_version_are_counted_both_ways(string walk, int steps)
    {
        var history = new History("");
        foreach (var (step, number) in walk.Select((step, number) => (step, number)))
        {
            if (step == '+') history.Make(TextChange.Between("", history.Text, $"{history.Text}{number}"));
            else if (step == '-') history.Undo();
            else if (step == 'r') history.Redo();
            else history.MarkSaved();
        }

        history.StepsFromSaved.ShouldBe(steps);
    }

    [Fact]
    public void Undoing_back_to_the_saved_version_is_saved_again()
    {
        var history = new History("a");
        history.IsSaved.ShouldBeTrue();
        history.Make(Append("b"));
        history.MarkSaved();
        history.Make(Append("c"));
        history.IsSaved.ShouldBeFalse();
        history.Undo();
        history.IsSaved.ShouldBeTrue();
        history.Undo();
        history.IsSaved.ShouldBeFalse();
        history.Redo();
        history.IsSaved.ShouldBeTrue();
    }

    [Fact]
    public void Another_way_to_the_same_text_is_another_version()
    {
        var history = new History("");
        history.Make(Append("a"));
        history.MarkSaved();
        history.Undo();
        history.Make(Append("a"));
        history.IsSaved.ShouldBeFalse();
        history.RedoTitle.ShouldBeNull();
    }

    [Fact]
    public void The_titles_tell_what_would_be_undone_and_redone()
    {
        var history = new History("");
        history.UndoTitle.ShouldBeNull();
        history.Make(Append("a") with { Title = "add a" });
        history.Make(Append("b") with { Title = "add b" });
        history.Undo()!.Title.ShouldBe("add b");
        (history.UndoTitle, history.RedoTitle).ShouldBe(("add a", "add b"));
    }

    [Fact]
    public void A_change_that_changes_nothing_is_no_step()
    {
        var history = new History("a");
        history.Make(new("nothing", [new(new(0, 1), "a")]));
        history.UndoTitle.ShouldBeNull();
        history.Undo().ShouldBeNull();
        history.Redo().ShouldBeNull();
    }

    private static TextChange Append(string text) => new("append", [TextEdit.Insert(0, text)]);

    private static List<string> Walk(int steps, Func<TextChange?> step, History history) =>
        [.. Enumerable.Range(0, steps).Select(_ => step() is null ? "" : history.Text)];
}
