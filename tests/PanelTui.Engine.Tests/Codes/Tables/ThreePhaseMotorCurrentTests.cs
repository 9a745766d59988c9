using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Codes.Tables;

/// <summary>NEC Table 430.250, 208 V column. From memory.</summary>
public class ThreePhaseMotorCurrentTests
{
    [Theory]
    [InlineData(0.5, 2.4)]
    [InlineData(0.75, 3.5)]
    [InlineData(1, 4.6)]
    [InlineData(1.5, 6.6)]
    [InlineData(2, 7.5)]
    [InlineData(3, 10.6)]
    [InlineData(5, 16.7)]
    [InlineData(7.5, 24.2)]
    [InlineData(10, 30.8)]
    [InlineData(15, 46.2)]
    [InlineData(20, 59.4)]
    [InlineData(25, 74.8)]
    [InlineData(30, 88)]
    [InlineData(40, 114)]
    [InlineData(50, 143)]
    [InlineData(60, 169)]
    [InlineData(75, 211)]
    [InlineData(100, 273)]
    [InlineData(125, 343)]
    [InlineData(150, 396)]
    [InlineData(200, 528)]
    public void Each_row_is_as_remembered(double output, double current)
    {
        var found = ThreePhaseMotorCurrent.Find(new Horsepower((decimal)output))!.Value;
        found.Current.Value.ShouldBe((decimal)current);
        found.Row.Value.ShouldBe((decimal)output);
    }

    [Fact]
    public void Outputs_and_currents_go_up()
    {
        ThreePhaseMotorCurrent.Rows.Length.ShouldBe(21);
        ThreePhaseMotorCurrent.Rows.Select(row => row.Output.Value).ShouldBeInOrder();
        ThreePhaseMotorCurrent.Rows.Select(row => row.Amperes[0]).ShouldBeInOrder();
    }

    [Fact]
    public void The_table_ends_at_200_hp() => ThreePhaseMotorCurrent.Find(201.Hp).ShouldBeNull();

    [Fact]
    public void Its_citation_says_that_it_is_from_memory() =>
        ThreePhaseMotorCurrent.Section.In(CodeEdition.Nec2023).ToString()
            .ShouldBe("NEC 2023 Table 430.250, from memory");
}
