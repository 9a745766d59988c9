using PanelTui.Presentation;

namespace PanelTui.Tests.Presentation;

public class FigureRowsTests
{
    [Fact]
    public void The_figures_beside_the_panel_tell_legs_neutral_demand_and_ratings() => Rows(Shed.Text, null, 25).ShouldBe(
    [
        " Connected        3220 VA",
        " Leg A    1440 VA  12.0 A",
        " Leg B    1780 VA  14.8 A",
        " Imbalance         10.6 %",
        " Neutral            2.8 A",
        "",
        " Demand           3220 VA",
        " Leg A             12.0 A",
        " Leg B             14.8 A",
        " Least ampacity    16.8 A",
        " Feeder 50 A   needs 20 A",
        " Transfer 50 A needs 50 A",
        "",
        " Source: Night",
        " A         1030 of 5000 W",
        " B         1370 of 5000 W",
    ]);

    [Fact]
    public void A_change_shows_what_it_would_do_beside_what_is() =>
        Rows(Shed.Text, Shed.Text.Replace("space: 1\n", "space: 7\n", StringComparison.Ordinal), 25)
            .ShouldContain(" Imbalance  10.6 → 40.4 %");

    [Fact]
    public void The_spaces_of_a_finding_stand_in_their_order()
    {
        var rows = FindingRows.Of(Shed.Snapshot(File.ReadAllText(Shed.Example("market-hall"))), 36, 60);
        var named = rows.Select(row => row.In(36).Text.Trim().Split(':')[0]).Where(row => row.Length > 2 && row[1] == ' ' && row.Contains(','))
            .Select(row => row[2..].Split(' ')[0].Split(',').Select(space => int.Parse(space.TrimEnd('a', 'b'), System.Globalization.CultureInfo.InvariantCulture)).ToList()).ToList();
        named.ShouldNotBeEmpty();
        named.ShouldAllBe(spaces => spaces.Order().SequenceEqual(spaces));
    }

    private static IEnumerable<string> Rows(string now, string? then, int columns) => FigureRows
        .Of(Shed.Snapshot(now).Assessment!, then is null ? null : Shed.Snapshot(then).Assessment)
        .Select(row => row.In(columns).Text.TrimEnd());
}
