using PanelTui.Sheets;

namespace PanelTui.Tests.Sheets;

/// <summary>Texts and sections: copies of 702.7(C), 710.15(C) and 710.10 on public pages, as the table of sign texts names them.</summary>
public class SignSheetTests
{
    [Theory]
    [InlineData("yes", "SEPARATELY DERIVED (BONDED NEUTRAL)")]
    [InlineData("no", "NONSEPARATELY DERIVED (FLOATING NEUTRAL)")]
    public void The_inlet_says_which_source_may_be_connected(string switches, string words) =>
        Signs($"switches_neutral: {switches}").ShouldContain(sign => sign.Where == "at the inlet" && sign.Text.Contains($" {words}", StringComparison.Ordinal));

    [Fact]
    public void Without_the_neutral_stated_the_inlet_sign_is_left_open()
    {
        var schedule = SheetCases.Read(Text("", "single", "dwelling")).Schedule;
        NeededSign.For(schedule).ShouldNotContain(sign => sign.Where == "at the inlet");
        NeededSign.Undecided(schedule).ShouldContain(sentence => sentence.Contains("switches_neutral", StringComparison.Ordinal));
    }

    [Fact]
    public void One_120_volt_source_on_both_legs_forbids_multiwire_circuits() =>
        Signs("", "in-phase").ShouldContain(sign => sign.Text.Contains("SINGLE 120-VOLT SUPPLY", StringComparison.Ordinal));

    [Theory, InlineData("dwelling", 0), InlineData("non-dwelling", 1)]
    public void The_supply_is_named_at_the_panel_but_for_dwellings(string occupancy, int signs) =>
        Signs("", "single", occupancy).Count(sign => sign.Text.StartsWith("FED FROM", StringComparison.Ordinal)).ShouldBe(signs);

    /// <summary>705.10 and 710.10 speak of sources that work together and of stand-alone inverters, not of a generator behind a switch.</summary>
    [Theory, InlineData("generator", 0), InlineData("inverters", 1)]
    public void Several_sources_are_signed_where_inverters_are(string kind, int signs) =>
        NeededSign.For(SheetCases.Read(Text("", "single", "dwelling").Replace("generator", kind, StringComparison.Ordinal)).Schedule)
            .Count(sign => sign.Text.Contains("MULTIPLE SOURCES", StringComparison.Ordinal)).ShouldBe(signs);

    [Theory, InlineData("generator", true), InlineData("inverters", false)]
    public void The_words_at_the_inlet_are_prescribed_for_a_generator(string kind, bool prescribed) =>
        NeededSign.For(SheetCases.Read(Text("switches_neutral: no", "single", "dwelling").Replace("generator", kind, StringComparison.Ordinal)).Schedule)
            .Single(sign => sign.Where == "at the inlet").Prescribed.ShouldBe(prescribed);

    [Fact]
    public void Without_a_source_no_sign_speaks_of_one() =>
        NeededSign.For(SheetCases.Read("schedule: 1\npanel: {system: 120/240 V 1ph 3W, spaces: 4}\n").Schedule).ShouldBeEmpty();

    private static NeededSign[] Signs(string transfer, string arrangement = "single", string occupancy = "dwelling") =>
        [.. NeededSign.For(SheetCases.Read(Text(transfer, arrangement, occupancy)).Schedule)];

    private static string Text(string transfer, string arrangement, string occupancy) => $$"""
        schedule: 1
        panel: {system: 120/240 V 1ph 3W, spaces: 4}
        code: {occupancy: {{occupancy}}}
        transfer: {kind: manual{{(transfer.Length == 0 ? "" : ", ")}}{{transfer}}}
        source: {kind: generator, arrangement: {{arrangement}}, outlet: L14-30}
        """;
}
