using PanelTui.Documents.Merging;
using PanelTui.Documents.Text;
using Terminal.Gui.Input;

namespace PanelTui.Tests.Screens;

/// <summary>A schedule that a merge left with conflict markers is settled in the editor, one by one.</summary>
public class MarkedFileTests
{
    private static readonly string Ours = Shed.Text.Replace("name: Shed lights", "name: Shed lights, east", StringComparison.Ordinal);

    private static readonly string Theirs = Shed.Text.Replace("name: Shed lights", "name: Lights of the shed", StringComparison.Ordinal);

    [Fact]
    public void The_conflicts_are_asked_first_and_nothing_can_be_changed_before()
    {
        using var desk = new DeskEditor(text: Marked);
        desk.Editor.Screen.ShouldContain("Changed on both sides: 0 of 1 settled");
        desk.Editor.Press(Key.Esc, Key.D).Session.Now.Source.Text.ShouldBe(Ours);
        desk.Editor.Screen.ShouldContain("M settles them");
        desk.Editor.Press(Key.M.WithShift).Screen.ShouldContain("Changed on both sides: 0 of 1 settled");
    }

    [Theory]
    [InlineData(MergeSide.Ours)]
    [InlineData(MergeSide.Theirs)]
    public void What_was_settled_is_saved_without_markers(MergeSide side)
    {
        using var desk = new DeskEditor(text: Marked);
        desk.Editor.Press(side == MergeSide.Ours ? Key.M : Key.O, Key.T);
        desk.Editor.Session.IsSaved.ShouldBeFalse();
        desk.Editor.Press(Key.S.WithCtrl);
        File.ReadAllText(desk.Editor.File).ShouldBe(side == MergeSide.Ours ? Ours : Theirs);
    }

    [Fact]
    public void Given_up_the_file_keeps_both_versions()
    {
        using var desk = new DeskEditor(text: Marked);
        desk.Editor.Press(Key.Esc, Key.S.WithCtrl, Key.Q);
        File.ReadAllText(desk.Editor.File).ShouldBe(Marked);
    }

    /// <summary>Lines that lie side by side are a conflict to a merge of lines; by what they say they are two changes.</summary>
    [Fact]
    public void What_only_lines_could_not_settle_is_settled_at_once()
    {
        const string Before = "    breaker: 15 A\n    loads:";
        Shed.Text.ShouldContain(Before);
        var marked = Shed.Text.Replace(Before, "<<<<<<< ours\n    breaker: 15 A\n    priority: 2\n||||||| base\n    breaker: 15 A\n=======\n    breaker: 20 A\n>>>>>>> theirs\n    loads:", StringComparison.Ordinal);
        using var desk = new DeskEditor(text: marked);
        desk.Editor.Session.ToSettle.ShouldBeNull();
        desk.Editor.Session.Now.Source.Text.ShouldContain("    breaker: 20 A\n    priority: 2\n    loads:");
        desk.Editor.Session.IsSaved.ShouldBeFalse();
    }

    private static string Marked => ScheduleMerge.Of(SourceText.FromString(Shed.Text), SourceText.FromString(Ours), SourceText.FromString(Theirs))
        .WithMarkers(MarkerLabels.Default);
}
