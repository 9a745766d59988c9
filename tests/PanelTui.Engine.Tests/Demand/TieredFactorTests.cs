using PanelTui.Engine.Codes;
using PanelTui.Engine.Demand;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Demand;

/// <summary>A demand factor in bands.</summary>
public class TieredFactorTests
{
    /// <summary>
    /// B31: a commercial wiring textbook, 2015 edition, sample problem 12-6: 200 000 VA of hotel lighting at 50, 40 and 30 %.
    /// Seen.
    /// </summary>
    private static readonly TieredFactor Hotel = new(
    [
        new(20_000.VA, 50.Pct),
        new(100_000.VA, 40.Pct),
        new(VoltAmperes.Unlimited, 30.Pct),
    ]);

    [Fact]
    public void Each_band_counts_at_its_own_factor()
    {
        var lines = Hotel.Apply(Lighting(200_000)).ToArray();
        lines.Select(line => line.Demand.Total.Value).ShouldBe([10_000, 32_000, 30_000]);
        lines.Select(line => line.Label).ShouldBe(
            ["Lighting, first 20000 VA", "Lighting, above 20000 VA to 100000 VA", "Lighting, above 100000 VA"]);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(20_000, 1)]
    [InlineData(20_001, 2)]
    [InlineData(100_000, 2)]
    public void A_band_that_is_not_reached_has_no_line(int power, int lines) =>
        Hotel.Apply(Lighting(power)).Count().ShouldBe(lines);

    private static DemandCategory Lighting(int power)
    {
        var circuit = Sketch.OnePole(1, Sketch.Of(power.VA, LoadKind.Lighting));
        var load = PlacedLoad.Of(circuit, circuit.Loads[0], PanelSystem.SplitPhase);
        return DemandCategory.Of("Lighting", PanelSystem.SplitPhase, [load], Citation.Arithmetic);
    }
}
