using PanelTui.Tests.Screens;
using Terminal.Gui.Input;

namespace PanelTui.Tests.Tasks;

/// <summary>Task 10: circuits off and on, a scenario, what each leg feels, what can start, the hours, one unit alone.</summary>
public class TryItOnStandbyTests
{
    [Theory]
    [MemberData(nameof(TaskSizes.Both), MemberType = typeof(TaskSizes))]
    public void What_the_source_feels_on_each_leg_is_one_key_and_follows_each_switch(int columns, int rows)
    {
        using var editor = Opened(columns, rows);
        editor.Press(Key.X, Key.CursorRight).Screen.ShouldContain("Harvest night");
        editor.Screen.ShouldContain("3400 of 5000 W");
        editor.Press(Key.Space).Screen.ShouldContain("2920 of 5000 W");
        editor.Screen.ShouldMatch(@"[0-9.]+ of 10\.00 kVA");
        editor.Screen.ShouldContain("Lasts ");
        editor.Screen.ShouldContain("One unit alone:");
        editor.Screen.ShouldContain("a trial with 1 switched");
        editor.Presses.ShouldBe(3);
        editor.Session.IsSaved.ShouldBeTrue();
    }

    [Theory]
    [MemberData(nameof(TaskSizes.Both), MemberType = typeof(TaskSizes))]
    public void What_can_start_the_hours_and_one_unit_alone_are_a_key_each(int columns, int rows)
    {
        using var editor = Opened(columns, rows);
        editor.Press(Key.X, Key.CursorRight, Key.I).Screen.ShouldContain("starts last");
        editor.Press(Key.Esc, Key.E).Screen.ShouldContain(" h");
        editor.Press(Key.Esc, Key.O).Screen.ShouldContain("unit");
        editor.Presses.ShouldBe(7);
    }

    private static OpenEditor Opened(int columns, int rows) => new(File.ReadAllText(Shed.Example("packing-shed")), columns, rows);
}
