using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Codes.Tables;

/// <summary>
/// ANSI/NEMA WD 6. Seen: an encyclopaedia's list, a reference article on plug types, and a transfer switch's manual; L5-20, L6-20,
/// L14-20 and L21-30 are from memory.
/// </summary>
public class OutletConfigurationsTests
{
    [Theory]
    [InlineData("5-15", 15, "125", 2, 3, true, Standing.Seen)]
    [InlineData("5-20", 20, "125", 2, 3, true, Standing.Seen)]
    [InlineData("TT-30", 30, "125", 2, 3, true, Standing.Seen)]
    [InlineData("L5-20", 20, "125", 2, 3, true, Standing.FromMemory)]
    [InlineData("L5-30", 30, "125", 2, 3, true, Standing.Seen)]
    [InlineData("5-30", 30, "125", 2, 3, true, Standing.Seen)]
    [InlineData("L6-20", 20, "250", 2, 3, false, Standing.FromMemory)]
    [InlineData("L6-30", 30, "250", 2, 3, false, Standing.Seen)]
    [InlineData("6-50", 50, "250", 2, 3, false, Standing.Seen)]
    [InlineData("L14-20", 20, "125/250", 3, 4, true, Standing.FromMemory)]
    [InlineData("L14-30", 30, "125/250", 3, 4, true, Standing.Seen)]
    [InlineData("14-30", 30, "125/250", 3, 4, true, Standing.Seen)]
    [InlineData("14-50", 50, "125/250", 3, 4, true, Standing.Seen)]
    [InlineData("10-30", 30, "125/250", 3, 3, true, Standing.Seen)]
    [InlineData("10-50", 50, "125/250", 3, 3, true, Standing.Seen)]
    [InlineData("L21-30", 30, "120/208", 4, 5, true, Standing.FromMemory)]
    public void Each_configuration_is_as_listed(
        string name, int amperes, string volts, int poles, int wires, bool neutral, Standing standing) =>
        OutletConfigurations.Find(name)
            .ShouldBe(new OutletConfiguration(name, amperes.A, volts, poles, wires, neutral, standing));

    [Fact]
    public void No_configuration_stands_twice() =>
        OutletConfigurations.All.Select(one => one.Name).ShouldBeUnique();

    [Theory]
    [InlineData(null)]
    [InlineData("L17-30")]
    public void What_is_not_in_the_list_is_not_known(string? name) => OutletConfigurations.Find(name).ShouldBeNull();
}
