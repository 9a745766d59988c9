using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Codes.Tables;

/// <summary>
/// NEC Chapter 9 Table 9, 60 Hz, 75 C, unchanged from 2011 to 2023. Seen: an engineering handbook's copy, a course handout, and a
/// scan of the table from 14 AWG to 1/0 AWG.
/// </summary>
public class ConductorImpedanceTests
{
    [Theory]
    [InlineData("14 AWG", 0.058, 0.073, 3.1, 3.1, null, null)]
    [InlineData("12 AWG", 0.054, 0.068, 2.0, 2.0, 3.2, 3.2)]
    [InlineData("10 AWG", 0.05, 0.063, 1.2, 1.2, 2.0, 2.0)]
    [InlineData("8 AWG", 0.052, 0.065, 0.78, 0.78, 1.3, 1.3)]
    [InlineData("6 AWG", 0.051, 0.064, 0.49, 0.49, 0.81, 0.81)]
    [InlineData("4 AWG", 0.048, 0.06, 0.31, 0.31, 0.51, 0.51)]
    [InlineData("3 AWG", 0.047, 0.059, 0.25, 0.25, 0.4, 0.4)]
    [InlineData("2 AWG", 0.045, 0.057, 0.19, 0.2, 0.32, 0.32)]
    [InlineData("1 AWG", 0.046, 0.057, 0.15, 0.16, 0.25, 0.25)]
    [InlineData("1/0 AWG", 0.044, 0.055, 0.12, 0.12, 0.2, 0.2)]
    [InlineData("2/0 AWG", 0.043, 0.054, 0.1, 0.1, 0.16, 0.16)]
    [InlineData("3/0 AWG", 0.042, 0.052, 0.077, 0.079, 0.13, 0.13)]
    [InlineData("4/0 AWG", 0.041, 0.051, 0.062, 0.063, 0.1, 0.1)]
    [InlineData("250 kcmil", 0.041, 0.052, 0.052, 0.054, 0.085, 0.086)]
    [InlineData("300 kcmil", 0.041, 0.051, 0.044, 0.045, 0.071, 0.072)]
    [InlineData("350 kcmil", 0.04, 0.05, 0.038, 0.039, 0.061, 0.063)]
    [InlineData("400 kcmil", 0.04, 0.049, 0.033, 0.035, 0.054, 0.055)]
    [InlineData("500 kcmil", 0.039, 0.048, 0.027, 0.029, 0.043, 0.045)]
    public void Each_row_is_as_printed(
        string size, double x, double xSteel, double copper, double copperSteel, double? aluminum, double? aluminumSteel)
    {
        var row = ConductorImpedance.Rows.Single(row => $"{row.Size}" == size);
        ((double)row.ReactancePvc, (double)row.ReactanceSteel).ShouldBe((x, xSteel));
        ((double)row.CopperPvc, (double)row.CopperSteel).ShouldBe((copper, copperSteel));
        ((double?)row.AluminumPvc, (double?)row.AluminumSteel).ShouldBe((aluminum, aluminumSteel));
    }

    [Fact]
    public void There_are_eighteen_rows_that_fall_in_ohms_and_steel_never_helps()
    {
        ConductorImpedance.Rows.Length.ShouldBe(18);
        ConductorImpedance.Rows.Select(row => row.CopperPvc).ShouldBeInOrder(SortDirection.Descending);
        ConductorImpedance.Rows.AtLeastOne().ShouldAllBe(row =>
            row.CopperSteel >= row.CopperPvc && row.ReactanceSteel > row.ReactancePvc && !(row.AluminumSteel < row.AluminumPvc));
    }

    [Fact]
    public void A_size_that_is_not_here_has_no_figure()
    {
        ConductorImpedance.Resistance(new Conductor(ConductorSize.OfKcmil(600), ConductorMetal.Copper), false).ShouldBeNull();
        ConductorImpedance.Resistance(new Conductor(ConductorSize.Awg(14), ConductorMetal.Aluminum), true).ShouldBeNull();
        ConductorImpedance.Reactance(ConductorSize.Awg(18), false).ShouldBeNull();
    }
}
