using PanelTui.Engine.Demand;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Demand;

/// <summary>The list of methods is complete, and each gives a figure where its own are there.</summary>
public class DemandBookTests
{
    [Fact]
    public void The_list_forgets_no_method() =>
        typeof(DemandBook).Assembly.GetTypes()
            .Where(type => type.IsSubclassOf(typeof(DemandMethod)) && !type.IsAbstract)
            .ShouldBe(DemandBook.All.Select(method => method.GetType()), ignoreOrder: true);

    [Fact]
    public void No_name_stands_for_two_methods() =>
        DemandBook.All.Select(method => method.Name).ShouldBeUnique();

    [Theory]
    [InlineData(DemandMethodName.DwellingStandard)]
    [InlineData(DemandMethodName.DwellingOptional)]
    [InlineData(DemandMethodName.DwellingExisting)]
    [InlineData(DemandMethodName.NonDwelling)]
    [InlineData(DemandMethodName.Selected)]
    public void A_panel_without_circuits_has_a_demand_of_nothing(DemandMethodName method) =>
        Sketch.Of().By(method).Assessed().Demand!.MinimumAmpacity.ShouldBe(0.A);

    [Fact]
    public void A_measured_load_that_nobody_wrote_down_gives_no_figure()
    {
        var assessed = Sketch.Of().By(DemandMethodName.Measured).Assessed();
        assessed.Demand.ShouldBeNull();
        assessed.Feeder.ShouldBeNull();
        assessed.Transfer.ShouldBeNull();
    }
}
