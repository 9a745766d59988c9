using PanelTui.Tests.Screens;
using Terminal.Gui.Input;

namespace PanelTui.Tests.Tasks;

/// <summary>Task 1: open a schedule and read what matters of it, without pressing a key.</summary>
public class ReadAPanelTests
{
    [Theory]
    [MemberData(nameof(TaskSizes.Both), MemberType = typeof(TaskSizes))]
    public void Legs_imbalance_demand_transfer_source_and_findings_stand_there_before_any_key(int columns, int rows)
    {
        using var editor = new OpenEditor(File.ReadAllText(Shed.Example("packing-shed")), columns, rows);
        foreach (var figure in (string[])["Connected", "Leg A", "Leg B", "Imbalance", "Neutral", "Demand", "Least ampacity", "Feeder 60 A", "Transfer 60 A"])
            editor.Screen.ShouldContain(figure);
        editor.Screen.ShouldContain("3400 of 5000 W");
        editor.Screen.ShouldMatch(@"Findings +0 E \d W \d N");
        editor.Screen.ShouldContain("W 1,6,9,10:");
        editor.Presses.ShouldBe(0);
    }

    [Theory]
    [MemberData(nameof(TaskSizes.Both), MemberType = typeof(TaskSizes))]
    public void A_name_that_is_cut_on_the_face_stands_in_full_below(int columns, int rows)
    {
        const string Name = "Receptacles along the whole north wall of the packing hall";
        using var editor = new OpenEditor(Shed.Text.Replace("Bench receptacles", Name, StringComparison.Ordinal), columns, rows);
        editor.Screen.ShouldContain("…");
        editor.Press(Key.CursorDown).Screen.ShouldContain(Name);
        editor.Presses.ShouldBe(1);
    }

    [Theory]
    [MemberData(nameof(TaskSizes.Both), MemberType = typeof(TaskSizes))]
    public void A_panel_of_84_spaces_scrolls_with_heading_legs_and_figures_in_sight(int columns, int rows)
    {
        using var editor = new OpenEditor(File.ReadAllText(Shed.Example("market-hall")), columns, rows);
        var heading = editor.Screen.Split('\n')[1];
        editor.Press(Key.End).Screen.ShouldContain("│C│");
        editor.Screen.Split('\n')[1].ShouldBe(heading);
        editor.Screen.ShouldContain("84");
        editor.Screen.ShouldContain("Imbalance");
    }
}
