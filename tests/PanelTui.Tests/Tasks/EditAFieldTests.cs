using PanelTui.Tests.Screens;
using Terminal.Gui.Input;

namespace PanelTui.Tests.Tasks;

/// <summary>Task 5: edit any field where it stands, with units, completion, and errors in place.</summary>
/// <remarks>That every key of the format can be reached is `FieldPagesTests.Every_key_of_the_format_can_be_reached_and_opened`.</remarks>
public class EditAFieldTests
{
    [Theory]
    [InlineData("p", "Main", "60", "main: 60 A")]
    [InlineData("f", "Breaker or fuse", "60", "ocpd: 60 A")]
    [InlineData("t", "Rating", "100 amps", "rating: 100 A")]
    [InlineData("s", "Continuous, each leg", "6 kW", "continuous_per_leg: 6 kW")]
    public void A_field_of_a_section_takes_two_keys_to_the_page_and_two_for_the_value(string section, string field, string typed, string written)
    {
        foreach (var (columns, rows) in ((int, int)[])[(80, 24), (120, 40)])
        {
            using var editor = new OpenEditor(columns: columns, rows: rows);
            editor.Press(Key.A, new Key(section[0]));
            editor.Presses.ShouldBe(2);
            editor.Choose(field);
            var before = editor.Presses;
            editor.Press(Key.Enter).Type(typed).Press(Key.Enter);
            (editor.Presses - before).ShouldBe(2);
            editor.Session.Now.Source.Text.ShouldContain(written);
            editor.Press(Key.U).Session.Now.Source.Text.ShouldBe(Shed.Text);
        }
    }

    [Theory]
    [MemberData(nameof(TaskSizes.Both), MemberType = typeof(TaskSizes))]
    public void An_entry_that_cannot_be_read_stays_with_the_reason_beside_it(int columns, int rows)
    {
        using var editor = new OpenEditor(columns: columns, rows: rows);
        editor.Press(Key.Enter, Key.Tab).Type("20 V").Press(Key.Enter).Screen.ShouldContain("a voltage; a current in A or kA is expected");
        editor.Screen.ShouldContain("20 V");
        editor.Press(Key.Esc).Session.Now.Source.Text.ShouldBe(Shed.Text);
    }
}
