using PanelTui.Tests.Screens;
using Terminal.Gui.Input;

namespace PanelTui.Tests.Tasks;

/// <summary>Task 9: ask for a better balance, fewest moves first, and take some or all of it.</summary>
public class BalanceTheLegsTests
{
    [Theory]
    [MemberData(nameof(TaskSizes.Both), MemberType = typeof(TaskSizes))]
    public void The_best_of_each_number_of_moves_is_one_key_and_says_that_it_is_proven(int columns, int rows)
    {
        using var editor = Opened(columns, rows);
        editor.Press(Key.B).Until("that is proven").Screen.ShouldContain("best, proven");
        var moves = editor.Screen.Split('\n').Where(line => line.Contains(" % ", StringComparison.Ordinal) && line.Contains("VA", StringComparison.Ordinal)).ToList();
        moves.Count.ShouldBeGreaterThan(1);
        editor.Presses.ShouldBe(1);
    }

    [Theory]
    [MemberData(nameof(TaskSizes.Both), MemberType = typeof(TaskSizes))]
    public void A_plan_is_looked_at_in_part_left_out_and_taken_in_few_keys_and_undone_in_one(int columns, int rows)
    {
        using var editor = Opened(columns, rows);
        var before = editor.Session.Now.Source.Text;
        editor.Press(Key.B).Until("that is proven").Press(Key.End, Key.Enter).Screen.ShouldContain("[x] 1.");
        editor.Press(Key.Enter).Screen.ShouldContain("[ ] 1.");
        editor.Press(Key.Enter, Key.T);
        editor.Presses.ShouldBeLessThanOrEqualTo(6);
        editor.Session.Now.Source.Text.ShouldNotBe(before);
        editor.Press(Key.U).Session.Now.Source.Text.ShouldBe(before);
    }

    private static OpenEditor Opened(int columns, int rows) => new(File.ReadAllText(Shed.Example("packing-shed")), columns, rows);
}
