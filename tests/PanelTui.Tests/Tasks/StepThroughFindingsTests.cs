using PanelTui.Tests.Screens;
using Terminal.Gui.Input;

namespace PanelTui.Tests.Tasks;

/// <summary>Task 8: step through the findings, go to each, see what would mend it.</summary>
public class StepThroughFindingsTests
{
    [Theory]
    [MemberData(nameof(TaskSizes.Both), MemberType = typeof(TaskSizes))]
    public void Each_finding_is_one_key_with_its_mend_and_its_rule(int columns, int rows)
    {
        using var editor = new OpenEditor(File.ReadAllText(Shed.Example("packing-shed")), columns, rows);
        foreach (var finding in editor.Session.Assessment.Findings.AtLeastOne())
        {
            editor.Press(Key.F);
            if (!finding.Spaces.IsEmpty) editor.Session.Cursor.ShouldBe(finding.Spaces[0]);
            editor.Session.Message.ShouldContain(finding.Mend);
            editor.Session.Message.ShouldEndWith($"({finding.Cite})");
        }

        editor.Presses.ShouldBe(editor.Session.Assessment.Findings.Length);
    }

    [Theory]
    [MemberData(nameof(TaskSizes.Both), MemberType = typeof(TaskSizes))]
    public void All_stand_on_one_page_with_their_mends_and_enter_goes_there(int columns, int rows)
    {
        using var editor = new OpenEditor(File.ReadAllText(Shed.Example("packing-shed")), columns, rows);
        editor.GoTo("8").Press(Key.F.WithShift).Screen.ShouldContain("Move a one-pole circuit of the heavier leg");
        editor.Press(Key.Enter).Session.Cursor.ToString().ShouldBe("1");
    }
}
