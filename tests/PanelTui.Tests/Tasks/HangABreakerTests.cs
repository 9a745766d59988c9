using PanelTui.Tests.Screens;
using Terminal.Gui.Input;

namespace PanelTui.Tests.Tasks;

/// <summary>Task 3: hang a breaker of any kind in an open space, named and with a load, in six keys beyond the text.</summary>
public class HangABreakerTests
{
    private const int MostKeys = 6;

    private const string ThreeLegs = """
        schedule: 1
        panel: {name: Hall, system: 208Y/120 V 3ph 4W, spaces: 12, bus: 100 A, main: 60 A}
        circuits:
          - {space: 1, name: Lights, breaker: 20 A, loads: [{kind: lighting, rating: 480 W}]}

        """;

    [Theory]
    [MemberData(nameof(TaskSizes.Both), MemberType = typeof(TaskSizes))]
    public void A_one_pole_breaker(int columns, int rows) =>
        ShouldHang(Shed.Text, "5", Key.D1, ("Yard light", "15 A", "lighting 100 W, continuous"), "5", columns, rows);

    [Theory]
    [MemberData(nameof(TaskSizes.Both), MemberType = typeof(TaskSizes))]
    public void A_two_pole_breaker(int columns, int rows) =>
        ShouldHang(Shed.Text, "5", Key.D2, ("Water heater", "30 A", "water-heater 4500 W"), "5 7", columns, rows);

    [Theory]
    [MemberData(nameof(TaskSizes.Both), MemberType = typeof(TaskSizes))]
    public void Half_a_tandem(int columns, int rows) => ShouldHang(
        Shed.Text.Replace("  - {space: 12, name: Spare, breaker: 20 A, spare: yes}\n", "", StringComparison.Ordinal),
        "12", Key.T, ("Radio", "15 A", "other 50 W"), "12a", columns, rows);

    [Theory]
    [MemberData(nameof(TaskSizes.Both), MemberType = typeof(TaskSizes))]
    public void A_three_pole_breaker(int columns, int rows) =>
        ShouldHang(ThreeLegs, "2", Key.D3, ("Press", "30 A", "motor 5 hp"), "2 4 6", columns, rows);

    private static void ShouldHang(
        string text, string space, Key kind, (string Name, string Rating, string Load) typed, string spaces, int columns, int rows)
    {
        using var editor = new OpenEditor(text, columns, rows);
        editor.GoTo(space);
        var before = editor.Presses;
        editor.Press(kind).Type(typed.Name).Press(Key.Enter).Type(typed.Rating).Press(Key.Enter).Type(typed.Load).Press(Key.Enter);
        (editor.Presses - before).ShouldBeLessThanOrEqualTo(MostKeys);
        var hung = editor.Session.Schedule.Circuits.Single(circuit => circuit.Name == typed.Name);
        string.Join(' ', hung.Spaces).ShouldBe(spaces);
        hung.Loads.ShouldHaveSingleItem();
        editor.Screen.ShouldContain("Done: Add");
        editor.Press(Key.U).Session.Now.Source.Text.ShouldBe(text);
    }
}
