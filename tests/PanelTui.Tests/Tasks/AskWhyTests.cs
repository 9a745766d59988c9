using PanelTui.Tests.Screens;
using Terminal.Gui.Input;

namespace PanelTui.Tests.Tasks;

/// <summary>Task 7: ask why of any figure.</summary>
public class AskWhyTests
{
    [Theory]
    [MemberData(nameof(TaskSizes.Both), MemberType = typeof(TaskSizes))]
    public void One_key_opens_the_steps_with_their_sections_and_an_arrow_turns_to_each_figure(int columns, int rows)
    {
        using var editor = new OpenEditor(File.ReadAllText(Shed.Example("packing-shed")), columns, rows);
        editor.Press(Key.Y).Screen.ShouldContain("by NEC 2023 Table 430.248");
        editor.Presses.ShouldBe(1);
        foreach (var figure in editor.Session.Assessment.Figures.AtLeastOne())
        {
            editor.Screen.ShouldContain("Why ");
            editor.Screen.ShouldContain("Comes to:");
            editor.Press(Key.CursorRight);
        }
    }

    [Theory]
    [MemberData(nameof(TaskSizes.Both), MemberType = typeof(TaskSizes))]
    public void A_click_on_a_figure_asks_the_same(int columns, int rows)
    {
        using var editor = new OpenEditor(File.ReadAllText(Shed.Example("packing-shed")), columns, rows);
        var row = Array.FindIndex(editor.Screen.Split('\n'), line => line.Contains("Imbalance", StringComparison.Ordinal));
        editor.Click(columns - 10, row).Screen.ShouldContain("Why imbalance");
    }
}
