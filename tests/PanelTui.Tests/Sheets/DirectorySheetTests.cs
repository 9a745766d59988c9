using PanelTui.Sheets;

namespace PanelTui.Tests.Sheets;

public class DirectorySheetTests
{
    private static readonly Sheet Directory = DirectorySheet.Of(SheetCases.Read("""
        schedule: 1
        panel: {name: Mill, fed_from: Service panel, revision: C, revised: 2026-11-20, verified_by: Keeper, system: 120/240 V 1ph 3W, spaces: 7, tandem_spaces: [5]}
        source: {kind: generator, location: Yard, continuous: 7 kW}
        transfer: {kind: interlock}
        circuits:
          - {space: 1, name: Pump, breaker: 20 A, poles: 2, verified: 2026-11-01}
          - {space: 5a, name: Lights, breaker: 15 A, verified: 2026-11-03}
          - {space: 2, breaker: 20 A, spare: yes}
        """));

    private static string[][] Rows =>
        [.. Directory.Blocks.OfType<Block.Grid>().Single().Table.Rows.Select(row => row.Select(cell => cell.Text).ToArray())];

    [Fact]
    public void Both_columns_stand_as_on_the_wall() => Rows[0].ShouldBe(["1", "Pump", "20 A 2P", "A", "20 A", "Spare", "2"]);

    [Fact]
    public void The_lower_pole_names_the_space_of_its_breaker() => Rows[1][1].ShouldBe("with 1");

    [Fact]
    public void A_tandem_has_a_row_for_each_half() => Rows.Select(row => row[0]).ShouldBe(["1", "3", "5a", "5b", "7"]);

    [Fact]
    public void An_open_half_and_an_open_space_are_named_open() => Rows[3][1].ShouldBe("Open");

    [Fact]
    public void Past_the_last_space_there_is_nothing() => Rows[4][5].ShouldBe("");

    [Theory]
    [InlineData("Fed from", "Service panel")]
    [InlineData("And from", "Generator, 7000 W in all, Yard, through interlock")]
    [InlineData("Revision", "C, 2026-11-20")]
    [InlineData("Verified", "2 of 3 circuits by Keeper, 2026-11-01 to 2026-11-03")]
    public void It_says_where_it_is_fed_from_and_how_old_it_is(string name, string value) =>
        Directory.Blocks.OfType<Block.Facts>().Single().Items.ShouldContain((name, value));

    [Fact]
    public void Every_position_of_the_panel_has_its_record() =>
        Directory.Records!.Rows.Select(row => row[0].Text).ShouldBe(["1", "2", "3", "4", "5a", "5b", "6", "7"]);

    /// <summary>A circuit that the face cannot show stands below it, and in the records: no sheet drops one.</summary>
    [Theory]
    [InlineData("3", "WITHOUT A PLACE OF ITS OWN: Fan, 15 A, written down at 3.")]
    [InlineData("9", "WITHOUT A PLACE OF ITS OWN: Fan, 15 A, written down at 9.")]
    public void A_circuit_without_a_place_is_named(string space, string sentence)
    {
        var sheet = SheetKind.Find("directory")!.Make(SheetCases.Read(WithFanAt(space)), SheetChoices.Default);
        sheet.Blocks.OfType<Block.Paragraph>().Select(paragraph => paragraph.Text).ShouldContain(sentence);
        sheet.Records!.Rows.ShouldContain(row => row[0].Text == space && row[1].Text == "none" && row[3].Text == "Fan");
    }

    [Fact]
    public void Every_circuit_stands_on_the_sheet_whatever_is_wrong_with_it()
    {
        var text = string.Concat(SheetKind.Find("directory")!.Make(SheetCases.Read(WithFanAt("3")), SheetChoices.Default).Records!.Rows
            .SelectMany(row => row.Select(cell => cell.Text)));
        text.ShouldContain("Pump");
        text.ShouldContain("Fan");
    }

    private static string WithFanAt(string space) => $$"""
        schedule: 1
        panel: {system: 120/240 V 1ph 3W, spaces: 6}
        circuits:
          - {space: 1, name: Pump, breaker: 20 A, poles: 2}
          - {space: {{space}}, name: Fan, breaker: 15 A}
        """;
}
