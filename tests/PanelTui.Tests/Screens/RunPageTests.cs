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
        editor.Press(Key.X, Key.CursorRight).Screen.ShouldContain("leg A     3400 of 5000 W");
        editor.Press(Key.Space).Screen.ShouldContain("leg A     2920 of 5000 W");
        editor.Screen.ShouldContain("Harvest night, a trial with 1 switched");
        editor.Press(Key.Space).Screen.ShouldContain("leg A     3400 of 5000 W");
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
        editor.Press(Key.X, Key.CursorRight).Screen.ShouldContain("On standby: All on standby");
    }

    /// <summary>The packing bench is not of the night's scenario: switched on, it counts on its leg and in the hours.</summary>
    [Fact]
    public void A_circuit_outside_the_scenario_can_be_switched_on()
    {
        using var editor = Opened();
        editor.Press(Key.X, Key.CursorRight).Screen.ShouldContain("[ ]   3 Packing bench receptacles");
        editor.Press(Key.CursorDown, Key.CursorDown, Key.Space).Screen.ShouldContain("[x]   3 Packing bench receptacles");
        editor.Screen.ShouldContain("leg B     2530 of 5000 W");
        editor.Screen.ShouldContain("Lasts 1.7 h to 25 %");
    }

    [Fact]
    public void The_figures_stay_in_sight_on_a_panel_of_84_spaces_and_name_the_trial_in_every_view()
    {
        using var editor = new OpenEditor(File.ReadAllText(Shed.Example("market-hall")));
        editor.Press(Key.X, Key.End, Key.Space).Screen.ShouldContain("of 40000 W");
        editor.Press(Key.PageDown, Key.PageDown).Screen.ShouldContain("worst start");
        editor.Press(Key.I).Screen.ShouldContain("What can start: All on standby, a trial with 1 switched");
    }

    [Fact]
    public void In_phase_a_240_volt_load_is_called_dead()
    {
        using var editor = new OpenEditor(File.ReadAllText(Shed.Example("packing-shed")).Replace("arrangement: split", "arrangement: in-phase", StringComparison.Ordinal));
        editor.Press(Key.X).Screen.ShouldContain("Cold room condensing unit           AB dead: no 240 V");
    }

    /// <summary>Common practice, no source: a tie moves both handles, so a shared neutral in phase is no less a danger with one half chosen.</summary>
    [Fact]
    public void Circuits_whose_handles_are_tied_switch_together_and_the_danger_goes_with_both_only()
    {
        var text = Shed.Text.Replace("arrangement: split", "arrangement: in-phase", StringComparison.Ordinal)
            .Replace("name: Shed lights", "multiwire: bench\n    tied: yes\n    name: Shed lights", StringComparison.Ordinal)
            .Replace("space: 3,", "space: 3, multiwire: bench, tied: yes,", StringComparison.Ordinal);
        using var editor = new OpenEditor(text);
        editor.Press(Key.X).Screen.ShouldContain("DANGER");
        editor.Press(Key.Space).Screen.ShouldContain("[ ]   1 Shed lights");
        editor.Screen.ShouldContain("[ ]   3 Bench receptacles");
        editor.Screen.ShouldContain("Their handles are tied");
        editor.Screen.ShouldNotContain("DANGER");
        editor.Screen.ShouldContain("> [ ]   1 Shed lights");
        editor.Press(Key.Space).Screen.ShouldContain("[x]   3 Bench receptacles");
        editor.Screen.ShouldContain("DANGER");
    }

    [Fact]
    public void From_one_view_the_keys_of_the_others_work_and_Esc_leads_back_to_the_circuits()
    {
        using var editor = Opened();
        editor.Press(Key.X, Key.CursorRight, Key.I).Screen.ShouldContain("What can start: Harvest night");
        editor.Press(Key.E).Screen.ShouldContain("How long it lasts: Harvest night");
        editor.Press(Key.N).Screen.ShouldContain("Neutral and bond: Harvest night");
        editor.Press(Key.CursorRight).Screen.ShouldContain("Neutral and bond: Sunday, nobody in");
        editor.Press(Key.O).Screen.ShouldContain("What if one unit stops: Sunday, nobody in");
        editor.Press(Key.Esc).Screen.ShouldContain("On standby: Sunday, nobody in");
    }

    [Fact]
    public void At_60_by_18_legs_start_hours_and_one_unit_are_in_sight()
    {
        using var editor = new OpenEditor(File.ReadAllText(Shed.Example("packing-shed")), 60, 18);
        Golden.ShouldMatch(editor.Press(Key.X, Key.CursorRight).Screen, "on-standby-60x18");
    }

    private static OpenEditor Opened() => new(File.ReadAllText(Shed.Example("packing-shed")));
}
