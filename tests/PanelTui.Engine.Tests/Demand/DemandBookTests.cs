using PanelTui.Engine.Demand;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Tests.Demand;

/// <summary>The list of methods is complete, and what is not there yet is said.</summary>
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
    [InlineData(DemandMethodName.Measured)]
    public void A_method_that_is_not_there_yet_gives_no_figure(DemandMethodName method)
    {
        var assessed = Sketch.Of().By(method).Assessed();
        assessed.Demand.ShouldBeNull();
        assessed.Feeder.ShouldBeNull();
        assessed.Transfer.ShouldBeNull();
    }
}
