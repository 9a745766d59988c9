using System.Globalization;
using System.Text.RegularExpressions;
using PanelTui.Commands;
using PanelTui.Tests.Screens;
using Terminal.Gui.Input;

namespace PanelTui.Tests;

/// <summary>docs/friendly.md promises habits and names the test of each.</summary>
public partial class FriendlyListTests
{
    private static readonly string[] Rows =
        [.. File.ReadLines(Path.Combine(SourceTree.Root, "docs", "friendly.md")).Where(line => RowStart().IsMatch(line))];

    [Fact]
    public void Each_habit_stands_once_with_its_test_or_the_reason_why_there_is_none()
    {
        var numbers = Rows.Select(row => int.Parse(RowStart().Match(row).Groups[1].Value, CultureInfo.InvariantCulture)).ToList();
        numbers.ShouldBeUnique();
        Rows.AtLeastOne().ShouldAllBe(row => NamedTests.Any(row) || row.Contains("Not tested", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_test_that_is_named_exists() => NamedTests.Missing(Rows).ShouldBeEmpty();

    [Fact]
    public void Familiar_keys_do_what_they_do_elsewhere()
    {
        (Key Key, Type Command)[] familiar =
        [
            (Key.S.WithCtrl, typeof(SaveCommand)), (Key.Z.WithCtrl, typeof(UndoCommand)), (Key.F.WithCtrl, typeof(FindCommand)), (Key.Q.WithCtrl, typeof(QuitCommand)),
            (new Key('?'), typeof(HelpCommand)), (Key.F1, typeof(HelpCommand)), (new Key('/'), typeof(FindCommand)), (Key.Delete, typeof(RemoveCommand)),
        ];
        foreach (var (key, command) in familiar)
            CommandBook.All.First(known => known.Modes.HasFlag(EditorMode.Face) && known.Keys.Contains(key)).ShouldBeOfType(command, $"{key}");
    }

    [Fact]
    public void No_key_of_a_multiplexer_does_anything()
    {
        Key[] taken = [Key.A.WithCtrl, Key.B.WithCtrl, Key.Space.WithCtrl, Key.H.WithCtrl];
        CommandBook.All.SelectMany(command => command.Keys).Intersect(taken).ShouldBeEmpty();
    }

    [Fact]
    public void Whatever_a_function_key_does_another_key_does_too() =>
        CommandBook.All.Where(command => command.Keys.Length > 0).AtLeastOne().ShouldAllBe(command => command.Keys.Any(key => key < Key.F1 || key > Key.F12));

    [Fact]
    public void A_search_narrows_the_list_and_counts()
    {
        using var editor = new OpenEditor();
        editor.Press(new Key('/')).Type("lamp").Screen.ShouldContain("Circuits with: lamp (1 of 6)");
        editor.Press(Key.Enter).Session.Cursor.ToString().ShouldBe("11b");
    }

    [GeneratedRegex(@"^\| (\d+) \|")]
    private static partial Regex RowStart();
}
