using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Codes.Tables;

/// <summary>
/// NEC Table 430.248, unchanged from 1999 to 2023. Seen: a wire maker's handbook page of the table under its 1999 number,
/// 430-148, and a second handbook page under the present one.
/// </summary>
public class MotorCurrentTests
{
    [Theory]
    [InlineData(0, 4.4, 2.5, 2.4, 2.2)]
    [InlineData(1, 5.8, 3.3, 3.2, 2.9)]
    [InlineData(2, 7.2, 4.1, 4.0, 3.6)]
    [InlineData(3, 9.8, 5.6, 5.4, 4.9)]
    [InlineData(4, 13.8, 7.9, 7.6, 6.9)]
    [InlineData(5, 16, 9.2, 8.8, 8.0)]
    [InlineData(6, 20, 11.5, 11.0, 10)]
    [InlineData(7, 24, 13.8, 13.2, 12)]
    [InlineData(8, 34, 19.6, 18.7, 17)]
    [InlineData(9, 56, 32.2, 30.8, 28)]
    [InlineData(10, 80, 46, 44, 40)]
    [InlineData(11, 100, 57.5, 55, 50)]
    public void Each_row_is_as_printed(int row, double at115, double at200, double at208, double at230) =>
        MotorCurrent.Rows[row].Amperes.Select(current => (double)current).ShouldBe([at115, at200, at208, at230]);

    [Fact]
    public void There_are_twelve_rows_from_a_sixth_to_10_hp()
    {
        MotorCurrent.Rows.Length.ShouldBe(12);
        MotorCurrent.Rows[0].Output.Value.ShouldBe(1m / 6);
        MotorCurrent.Rows[^1].Output.ShouldBe(10.Hp);
    }

    [Fact]
    public void A_larger_motor_takes_more_and_a_higher_voltage_less()
    {
        MotorCurrent.Rows.Select(row => row.Output.Value).ShouldBeInOrder();
        MotorCurrent.Rows.AtLeastOne().ShouldAllBe(row => row.Amperes.SequenceEqual(row.Amperes.OrderDescending()));
        for (var column = 0; column < MotorCurrent.Columns.Length; column++)
            MotorCurrent.Rows.Select(row => row.Amperes[column]).ShouldBeInOrder();
    }

    [Theory]
    [InlineData(110, 24)]
    [InlineData(120, 24)]
    [InlineData(200, 13.8)]
    [InlineData(208, 13.2)]
    [InlineData(219, 13.2)]
    [InlineData(220, 12)]
    [InlineData(240, 12)]
    public void A_2_hp_motor_is_read_in_the_column_of_its_voltage(int volts, double current) =>
        MotorCurrent.Find(2.Hp, volts.V)!.Value.Current.Value.ShouldBe((decimal)current);

    [Fact]
    public void Between_two_rows_the_next_larger_one_counts_and_says_so()
    {
        var found = MotorCurrent.Find(4.Hp, 240.V)!.Value;
        found.Current.ShouldBe(28.A);
        found.Row.ShouldBe(5.Hp);
    }

    [Fact]
    public void A_third_of_a_horsepower_may_be_written_with_three_digits() =>
        MotorCurrent.Find(0.333m.Hp, 120.V)!.Value.Current.ShouldBe(7.2m.A);

    [Fact]
    public void The_table_ends_at_10_hp()
    {
        MotorCurrent.Find(10.Hp, 240.V).ShouldNotBeNull();
        MotorCurrent.Find(10.5m.Hp, 240.V).ShouldBeNull();
    }
}
