namespace PanelTui.Engine.Tests;

public class HouseTests
{
    [Fact]
    public void It_runs() => 1.ShouldBe(1);
}
