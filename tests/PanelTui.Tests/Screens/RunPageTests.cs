using Terminal.Gui.Input;

namespace PanelTui.Tests.Screens;

/// <summary>What the source feels, tried in the editor.</summary>
public class RunPageTests
{
    [Fact]
    public void A_scenario_stands_against_every_limit_with_its_circuits_below()
    {
        using var editor = Opened();
        Golden.ShouldMatch(editor.Press(Key.X, Key.CursorRight).Screen, "on-standby-80x24");
    }

    [Fact]
    public void A_circuit_is_switched_off_as_a_trial_and_nothing_is_written()
    {
        using var editor = Opened();
        var before = editor.Session.Now.Source.Text;
        editor.Press(Key.X, Key.CursorRight).Screen.ShouldContain("leg A       3400 W");
        editor.Press(Key.Space).Screen.ShouldContain("leg A       2920 W");
        editor.Screen.ShouldContain("1 switched off as a trial");
        editor.Press(Key.Space).Screen.ShouldContain("leg A       3400 W");
        editor.Session.Now.Source.Text.ShouldBe(before);
        editor.Session.IsSaved.ShouldBeTrue();
    }

    [Theory]
    [InlineData("start", "I")]
    [InlineData("hours", "E")]
    [InlineData("one-unit", "O")]
    [InlineData("neutral", "N")]
    public void Each_view_at_80_by_24(string name, string key)
    {
        using var editor = Opened();
        Golden.ShouldMatch(editor.Press(Key.X, Key.CursorRight, new Key(key[0]).NoShift).Screen, $"on-standby-{name}-80x24");
    }

    [Fact]
    public void Without_scenarios_everything_is_on()
    {
        using var editor = new OpenEditor(Shed.Text[..Shed.Text.IndexOf("scenarios:", StringComparison.Ordinal)]);
        editor.Press(Key.X, Key.CursorRight).Screen.ShouldContain("On standby: everything on");
    }

    private static OpenEditor Opened() => new(File.ReadAllText(Shed.Example("packing-shed")));
}
