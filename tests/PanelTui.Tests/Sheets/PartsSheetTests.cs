using PanelTui.Sheets;

namespace PanelTui.Tests.Sheets;

public class PartsSheetTests
{
    private static readonly string[][] Rows = [.. PartsSheet.Of(SheetCases.Read("""
        schedule: 1
        panel: {system: 120/240 V 1ph 3W, spaces: 12, main: 60 A, tandem_spaces: [11]}
        source: {kind: generator, continuous: 7 kW, outlet: L14-30}
        transfer: {kind: manual, rating: 60 A, switches_neutral: no}
        circuits:
          - {space: 1, name: A, breaker: 20 A, wire: 12 AWG Cu, length: 100 ft, multiwire: M, loads: [{kind: lighting, rating: 100 W}]}
          - {space: 3, name: B, breaker: 20 A, wire: 12 AWG Cu, length: 100 ft, multiwire: M, loads: [{kind: lighting, rating: 100 W}]}
          - {space: 2, name: C, breaker: 30 A, poles: 2, wire: 10 AWG Cu, length: 10 m, loads: [{kind: water-heater, rating: 4.5 kW}]}
          - {space: 11a, name: D, breaker: 15 A, wire: 14 AWG Cu}
          - {space: 11b, name: E, breaker: 20 A, spare: yes}
        """)).Records!.Rows.Select(row => row.Select(cell => cell.Text).ToArray())];

    [Theory]
    [InlineData("main, 60 A, 2-pole", "1")]
    [InlineData("1-pole 20 A, standard", "2")]
    [InlineData("2-pole 30 A, standard", "1")]
    [InlineData("tandem, 15 A and 20 A", "1")]
    [InlineData("filler for an open space", "7")] // 12 less 1, 2, 3, 4 and 11
    public void Breakers_and_fillers_are_counted(string part, string quantity) => QuantityOf(part).ShouldBe(quantity);

    [Fact]
    public void A_line_is_as_long_as_its_poles_with_the_allowance() => QuantityOf("12 AWG Cu, line").ShouldBe("230"); // 2 x 100 ft x 1.15

    [Fact]
    public void A_shared_neutral_is_counted_once() => QuantityOf("12 AWG Cu, neutral").ShouldBe("115");

    [Fact]
    public void A_load_between_the_lines_needs_no_neutral() => Rows.ShouldNotContain(row => row[1] == "10 AWG Cu, neutral");

    [Fact]
    public void Metres_go_beside_the_feet()
    {
        var row = Rows.Single(row => row[1] == "10 AWG Cu, line");
        (row[2], row[4]).ShouldBe(("76", "23.2")); // 2 x 10 m x 1.15 = 75.5 ft, whole feet up
    }

    [Fact]
    public void What_nobody_wrote_down_is_listed() => Rows.ShouldContain(row => row[1] == "wire or length not stated" && row[5] == "spaces 11a");

    private static string QuantityOf(string part) => Rows.Single(row => row[1] == part)[2];
}
