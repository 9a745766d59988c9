using PanelTui.Tests.CommandLine;

namespace PanelTui.Tests.Sheets;

/// <summary>How long the battery lasts, as a picture.</summary>
public class CourseChartTests
{
    [Fact]
    public void The_plots_show_the_charge_over_72_hours_down_to_the_reserve_for_each_scenario()
    {
        var svg = Ran.Of("print", "plots", Shed.Example("packing-shed"), "--format", "svg").Out;
        svg.ShouldContain("Harvest night: 72 hours from full at midnight, with the stated sun, grid and generator gone");
        svg.ShouldContain("Sunday, nobody in: 72 hours from full");
        svg.ShouldContain("reserve 25 %");
        svg.ShouldContain("loads go without after 2.3 h");
    }

    [Fact]
    public void Without_a_battery_there_is_no_course() =>
        Ran.Of("print", "plots", Shed.Example("market-hall"), "--format", "svg").Out.ShouldNotContain("72 hours");
}
