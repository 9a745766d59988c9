using PanelTui.Sheets;
using PanelTui.Sheets.Formats;

namespace PanelTui.Tests.Sheets;

/// <summary>The one-line diagram asserts no more than the file does.</summary>
public class DiagramSheetTests
{
    [Fact]
    public void In_letters_it_shows_both_supplies_the_equipment_and_every_circuit()
    {
        var text = Text("switches_neutral: no", "neutral: floating", "");
        foreach (var part in new[] { "NORMAL SUPPLY", "STANDBY SOURCE", "source's breaker 30 A", "NEMA L14-30", "manual transfer switch, 30 A", "neutral solid", "+--[x] 1    20 A         Mill", "+--[x] 2    30 A 2P      Mill" })
            text.ShouldContain(part);
        text.Lines().ShouldAllBe(line => line.Length <= 100);
    }

    [Theory]
    [InlineData("switches_neutral: no", "neutral: floating", "", "bonded once")]
    [InlineData("switches_neutral: no", "neutral: bonded", "", "BONDED TWICE")]
    [InlineData("switches_neutral: yes", "neutral: floating", "", "BONDED NOWHERE")]
    [InlineData("rating: 30 A", "neutral: floating", "", "Not to be told: write down transfer.switches_neutral")]
    [InlineData("switches_neutral: no", "neutral: floating", ", neutral_bonded: yes", "The bond in this panel comes on top")]
    public void The_bonds_are_told_as_run_tells_them(string transfer, string source, string panel, string words) =>
        Text(transfer, source, panel).ReplaceLineEndings(" ").ShouldContain(words);

    [Fact]
    public void Nothing_is_asserted_of_the_service() =>
        Text("switches_neutral: no", "neutral: floating", "").ReplaceLineEndings(" ").ShouldContain("service: bond and electrode not in this file");

    /// <summary>Without a grid there is no service at which the bond would belong.</summary>
    [Fact]
    public void Off_the_grid_a_bond_in_this_panel_is_not_called_out_of_place()
    {
        var text = Shed.Text.Replace("transfer: {kind: manual, rating: 50 A}\n", "", StringComparison.Ordinal)
            .Replace("feeder: {ocpd: 50 A}\n", "", StringComparison.Ordinal)
            .Replace("neutral_bonded: no", "neutral_bonded: yes", StringComparison.Ordinal)
            .Replace("arrangement: split,", "arrangement: split, neutral: floating,", StringComparison.Ordinal);
        var diagram = TextFormat.Of(SheetKind.Find("diagram")!.Make(SheetCases.Read(text), SheetChoices.Default)).ReplaceLineEndings(" ");
        diagram.ShouldContain("panel: neutral bonded here");
        diagram.ShouldNotContain("belongs at the service only");
        diagram.ShouldNotContain("comes on top");
    }

    private static string Text(string transfer, string source, string panel) => TextFormat.Of(SheetKind.Find("diagram")!.Make(
        SheetCases.Read(SheetCases.TextNamed("Mill")
            .Replace("rating: 30 A, switches_neutral: no", transfer == "rating: 30 A" ? transfer : $"rating: 30 A, {transfer}", StringComparison.Ordinal)
            .Replace("neutral: floating", source, StringComparison.Ordinal)
            .Replace("spaces: 8", $"spaces: 8{panel}", StringComparison.Ordinal)),
        SheetChoices.Default));
}
