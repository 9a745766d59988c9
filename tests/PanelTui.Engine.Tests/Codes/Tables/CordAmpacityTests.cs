using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Codes.Tables;

/// <summary>
/// NEC Table 400.5(A)(1), hard-service cord. Seen: an appliance standard's clause on 400.5(A) for two conductors, a question thread
/// on 10/4 cord, a trade forum for 8 AWG and an article for 6 AWG with two; 6 AWG with three, 4 and 2 AWG are from memory.
/// </summary>
public class CordAmpacityTests
{
    [Theory]
    [InlineData(18, 7, 10)]
    [InlineData(16, 10, 13)]
    [InlineData(14, 15, 18)]
    [InlineData(12, 20, 25)]
    [InlineData(10, 25, 30)]
    [InlineData(8, 35, 40)]
    [InlineData(6, 45, 55)]
    [InlineData(4, 60, 70)]
    [InlineData(2, 80, 95)]
    public void Each_row_is_as_printed(int gauge, int three, int two)
    {
        CordAmpacity.Find(Copper(gauge), threeConductors: true).ShouldBe(three.A);
        CordAmpacity.Find(Copper(gauge), threeConductors: false).ShouldBe(two.A);
    }

    [Fact]
    public void Thicker_cord_carries_more()
    {
        CordAmpacity.Rows.Length.ShouldBe(9);
        CordAmpacity.Rows.Select(row => row.Three).ShouldBeInOrder();
        CordAmpacity.Rows.AtLeastOne().ShouldAllBe(row => row.Two > row.Three);
    }

    [Theory]
    [InlineData(10, true, Standing.Seen)]
    [InlineData(6, true, Standing.FromMemory)]
    [InlineData(6, false, Standing.Seen)]
    [InlineData(2, false, Standing.FromMemory)]
    public void What_stands_from_memory_says_so(int gauge, bool three, Standing standing) =>
        CordAmpacity.SectionFor(Copper(gauge), three).Standing.ShouldBe(standing);

    [Fact]
    public void Cord_is_made_of_copper_and_no_thicker_than_2_AWG()
    {
        CordAmpacity.Find(new Conductor(ConductorSize.Awg(10), ConductorMetal.Aluminum), true).ShouldBeNull();
        CordAmpacity.Find(Copper(1), true).ShouldBeNull();
        CordAmpacity.Find(new Conductor(ConductorSize.OfKcmil(250), ConductorMetal.Copper), true).ShouldBeNull();
    }

    private static Conductor Copper(int gauge) => new(ConductorSize.Awg(gauge), ConductorMetal.Copper);
}
