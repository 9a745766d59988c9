using PanelTui.Tests.Screens;
using Terminal.Gui.Input;

namespace PanelTui.Tests.Tasks;

/// <summary>Task 4: move, swap and copy breakers, with the balance in sight before the drop.</summary>
public class MoveABreakerTests
{
    [Theory]
    [MemberData(nameof(TaskSizes.Both), MemberType = typeof(TaskSizes))]
    public void A_swap_takes_three_keys_and_shows_the_balance_before_the_drop(int columns, int rows)
    {
        using var editor = new OpenEditor(columns: columns, rows: rows);
        editor.Press(Key.Space, Key.CursorDown).Screen.ShouldMatch(@"Imbalance +10\.6 → 4\.3 %");
        editor.Session.Now.Source.Text.ShouldBe(Shed.Text);
        editor.Press(Key.Enter).Screen.ShouldMatch(@"Imbalance +4\.3 %");
        editor.Presses.ShouldBe(3);
    }

    [Theory]
    [MemberData(nameof(TaskSizes.Both), MemberType = typeof(TaskSizes))]
    public void A_two_pole_breaker_keeps_two_spaces_of_one_side_wherever_it_goes(int columns, int rows)
    {
        using var editor = new OpenEditor(columns: columns, rows: rows);
        editor.GoTo("2").Press(Key.Space, Key.CursorDown, Key.CursorDown, Key.Enter);
        string.Join(' ', editor.Session.Schedule.Circuits.Single(circuit => circuit.Name == "Well pump").Spaces).ShouldBe("6 8");
    }

    [Theory]
    [MemberData(nameof(TaskSizes.Both), MemberType = typeof(TaskSizes))]
    public void A_copy_takes_two_keys_beyond_the_walk_and_has_a_name_of_its_own_in_the_file(int columns, int rows)
    {
        using var editor = new OpenEditor(columns: columns, rows: rows);
        editor.GoTo("3").Press(Key.C).GoTo("5").Press(Key.P);
        var here = editor.Session.Here!;
        here.Name.ShouldStartWith("Bench receptacles");
        editor.Session.Schedule.Circuits.Select(circuit => circuit.Id).Where(id => id is not null).ShouldBeUnique();
    }

    [Theory]
    [MemberData(nameof(TaskSizes.Both), MemberType = typeof(TaskSizes))]
    public void Circuits_that_share_a_neutral_are_warned_of_before_they_land_on_one_leg(int columns, int rows)
    {
        var text = Shed.Text
            .Replace("    breaker: 15 A\n    loads:", "    breaker: 15 A\n    multiwire: one\n    loads:", StringComparison.Ordinal)
            .Replace("name: Bench receptacles, breaker: 20 A,", "name: Bench receptacles, breaker: 20 A, multiwire: one,", StringComparison.Ordinal);
        using var editor = new OpenEditor(text, columns, rows);
        editor.GoTo("3").Press(Key.Space, Key.CursorDown);
        editor.Session.Preview!.Assessment!.Findings.ShouldContain(finding => finding.Message.Contains("neutral", StringComparison.Ordinal));
        editor.Session.Now.Source.Text.ShouldBe(text);
    }
}
