using PanelTui.Tests.CommandLine;
using PanelTui.Tests.Screens;
using Terminal.Gui.Input;

namespace PanelTui.Tests.Tasks;

/// <summary>Task 13: whatever breaks, nothing is lost and the words are clear.</summary>
/// <remarks>Signals, dropped lines, kills and full disks on a real terminal and disk: docs/reliability.md names the test of each.</remarks>
public class SurviveTests
{
    private static readonly string Theirs = Shed.Text.Replace("Bench receptacles", "Saw", StringComparison.Ordinal);

    [Fact]
    public void What_a_dropped_line_left_is_offered_at_the_next_start_and_one_key_takes_it()
    {
        using var desk = new DeskEditor((desk, path) => desk.Leave(path, Theirs));
        desk.Editor.Screen.ShouldContain("nsaved");
        desk.Editor.Press(Key.T).Session.Now.Source.Text.ShouldBe(Theirs);
        desk.Editor.OnDisk.ShouldBe(Shed.Text);
        desk.Editor.Presses.ShouldBe(1);
    }

    [Theory]
    [MemberData(nameof(TaskSizes.Both), MemberType = typeof(TaskSizes))]
    public void A_file_changed_underneath_is_asked_about_and_neither_version_is_lost(int columns, int rows)
    {
        using var editor = new OpenEditor(columns: columns, rows: rows);
        editor.Press(Key.D);
        var mine = editor.Session.Now.Source.Text;
        File.WriteAllText(editor.File, Theirs);
        editor.Press(Key.S.WithCtrl).Screen.ShouldContain("has been changed by another program");
        editor.Press(Key.R).Session.Now.Source.Text.ShouldBe(Theirs);
        editor.Press(Key.U).Session.Now.Source.Text.ShouldBe(mine);
        editor.OnDisk.ShouldBe(Theirs);
    }

    [Theory]
    [InlineData("first: plain\nlast: line\n")]
    [InlineData("\0\u0001\u0002")]
    [InlineData("a: &a [*a]")]
    [InlineData("{{{{{{{{")]
    [InlineData("")]
    public void The_file_of_another_program_is_told_in_a_sentence_and_left_alone(string text)
    {
        using var folder = new TempFolder();
        var file = folder.File("other.panel.yaml", text);
        var ran = Ran.Of("check", file);
        ran.Code.ShouldBe(2);
        $"{ran.Out}{ran.Error}".ShouldContain("other.panel.yaml");
        $"{ran.Out}{ran.Error}".ShouldNotContain("Exception");
        Ran.Of(file).Code.ShouldBe(2);
        File.ReadAllText(file).ShouldBe(text);
    }
}
