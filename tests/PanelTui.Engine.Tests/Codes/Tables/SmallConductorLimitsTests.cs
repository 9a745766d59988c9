using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Codes.Tables;

/// <summary>
/// NEC 240.4(D). Seen: a licence-renewal course on 240.4(D), and a lesson on the 2023 change for 14 AWG copper-clad aluminum; 18 and
/// 16 AWG are from memory.
/// </summary>
public class SmallConductorLimitsTests
{
    [Theory]
    [InlineData(18, ConductorMetal.Copper, 7)]
    [InlineData(16, ConductorMetal.Copper, 10)]
    [InlineData(14, ConductorMetal.Copper, 15)]
    [InlineData(12, ConductorMetal.Copper, 20)]
    [InlineData(10, ConductorMetal.Copper, 30)]
    [InlineData(12, ConductorMetal.Aluminum, 15)]
    [InlineData(10, ConductorMetal.Aluminum, 25)]
    [InlineData(12, ConductorMetal.CopperCladAluminum, 15)]
    [InlineData(10, ConductorMetal.CopperCladAluminum, 25)]
    public void Each_small_conductor_has_a_largest_breaker(int gauge, ConductorMetal metal, int most) =>
        Find(gauge, metal, CodeEdition.Nec2017).ShouldBe(most.A);

    [Fact]
    public void From_8_AWG_on_there_is_no_such_limit() => Find(8, ConductorMetal.Copper, CodeEdition.Nec2023).ShouldBeNull();

    [Theory]
    [InlineData(CodeEdition.Nec2017, null)]
    [InlineData(CodeEdition.Nec2020, null)]
    [InlineData(CodeEdition.Nec2023, 10)]
    public void Copper_clad_14_AWG_came_in_2023(CodeEdition edition, int? most) =>
        Find(14, ConductorMetal.CopperCladAluminum, edition).ShouldBe(most?.A);

    [Theory]
    [InlineData(16, "NEC 2023 240.4(D), from memory")]
    [InlineData(14, "NEC 2023 240.4(D)")]
    public void What_stands_from_memory_says_so(int gauge, string cite) =>
        $"{SmallConductorLimits.CiteFor(new Conductor(ConductorSize.Awg(gauge), ConductorMetal.Copper), CodeEdition.Nec2023)}"
            .ShouldBe(cite);

    private static Amperes? Find(int gauge, ConductorMetal metal, CodeEdition edition) =>
        SmallConductorLimits.Find(new Conductor(ConductorSize.Awg(gauge), metal), edition);
}
