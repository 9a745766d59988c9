using PanelTui.Engine.Quantities;
using PanelTui.Engine.Sizing;

namespace PanelTui.Engine.Tests.Sizing;

/// <summary>The feeder's device is the next standard rating not below the minimum ampacity, 215.3 and 240.6(A).</summary>
public class FeederSizingTests
{
    /// <summary>C15: Annex D goes from 104 A to 110 A. Seen.</summary>
    [Theory]
    [InlineData(104, 110)]
    [InlineData(110, 110)]
    [InlineData(111, 125)]
    public void The_device_is_the_next_standard_rating(int load, int device) =>
        Feeder(load).StandardOcpd.ShouldBe(device.A);

    [Fact]
    public void Above_the_table_there_is_no_device()
    {
        Feeder(6001).StandardOcpd.ShouldBeNull();
        Feeder(6001).Why().Steps[^1].Label.ShouldBe("No standard rating is as large");
    }

    [Fact]
    public void Its_derivation_cites_the_table() =>
        Feeder(104).Why().Steps[^1].Cite.ToString().ShouldBe("NEC 2023 Table 240.6(A)");

    private static FeederSizing Feeder(int load) =>
        Sketch.Of(Sketch.TwoPole(1, Sketch.Of(load.A))).Assessed().Feeder!;
}
