using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Codes.Tables;

/// <summary>NEC Table 250.122, alike from 2017 to 2023. Seen: an engineering handbook's copy, and a trade newsletter on 250.122.</summary>
public class GroundingConductorTests
{
    [Theory]
    [InlineData(15, "14 AWG", "12 AWG")]
    [InlineData(20, "12 AWG", "10 AWG")]
    [InlineData(60, "10 AWG", "8 AWG")]
    [InlineData(100, "8 AWG", "6 AWG")]
    [InlineData(200, "6 AWG", "4 AWG")]
    [InlineData(300, "4 AWG", "2 AWG")]
    [InlineData(400, "3 AWG", "1 AWG")]
    [InlineData(500, "2 AWG", "1/0 AWG")]
    [InlineData(600, "1 AWG", "2/0 AWG")]
    [InlineData(800, "1/0 AWG", "3/0 AWG")]
    [InlineData(1000, "2/0 AWG", "4/0 AWG")]
    [InlineData(1200, "3/0 AWG", "250 kcmil")]
    [InlineData(1600, "4/0 AWG", "350 kcmil")]
    [InlineData(2000, "250 kcmil", "400 kcmil")]
    public void Each_row_is_as_printed(int device, string copper, string aluminum)
    {
        $"{GroundingConductor.Find(device.A, ConductorMetal.Copper)!.Size}".ShouldBe(copper);
        $"{GroundingConductor.Find(device.A, ConductorMetal.Aluminum)!.Size}".ShouldBe(aluminum);
    }

    [Fact]
    public void There_are_fourteen_rows_and_they_grow()
    {
        GroundingConductor.Rows.Length.ShouldBe(14);
        GroundingConductor.Rows.Select(row => row.UpTo).ShouldBeInOrder();
        GroundingConductor.Rows.Select(row => row.Copper).ShouldBeInOrder();
        GroundingConductor.Rows.Select(row => row.Aluminum).ShouldBeInOrder();
    }

    [Theory]
    [InlineData(21, "10 AWG")]
    [InlineData(30, "10 AWG")]
    [InlineData(40, "10 AWG")]
    [InlineData(61, "8 AWG")]
    public void A_device_between_two_rows_goes_to_the_larger_one(int device, string size) =>
        $"{GroundingConductor.Find(device.A, ConductorMetal.Copper)!.Size}".ShouldBe(size);

    [Fact]
    public void Above_2000_A_there_is_none() => GroundingConductor.Find(2001.A, ConductorMetal.Copper).ShouldBeNull();
}
