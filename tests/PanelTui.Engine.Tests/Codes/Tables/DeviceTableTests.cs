using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Codes.Tables;

/// <summary>
/// NEC Table 430.52 and 440.22(A). Seen: a handbook copy of the 2011 table, a motor control tutorial, and a trade quiz on 440.22;
/// 300 % above 100 A is from memory. 110.14(C) is seen in two trade forums.
/// </summary>
public class DeviceTableTests
{
    [Theory]
    [InlineData(MotorDeviceKind.NonTimeDelayFuse, 300)]
    [InlineData(MotorDeviceKind.DualElementFuse, 175)]
    [InlineData(MotorDeviceKind.InstantaneousBreaker, 800)]
    [InlineData(MotorDeviceKind.InverseTimeBreaker, 250)]
    public void A_motor_device_is_a_share_of_the_full_load_current(MotorDeviceKind kind, int share)
    {
        MotorDevice.Columns.Length.ShouldBe(4);
        MotorDevice.Of(kind).ShouldBe(share.Pct);
        MotorDevice.Columns[(int)kind].Kind.ShouldBe(kind);
    }

    [Theory]
    [InlineData(100, 400)]
    [InlineData(101, 300)]
    public void A_breaker_that_will_not_let_it_start_may_be_larger(int fullLoad, int share) =>
        MotorDevice.MostBreaker(fullLoad.A).ShouldBe(share.Pct);

    [Fact]
    public void A_compressor_has_175_percent_and_225_at_most() =>
        (CompressorDevice.Usual, CompressorDevice.Most).ShouldBe((175.Pct, 225.Pct));

    [Theory]
    [InlineData(null, 100, TemperatureColumn.At60)]
    [InlineData(null, 110, TemperatureColumn.At75)]
    [InlineData(60, 200, TemperatureColumn.At60)]
    [InlineData(74, 20, TemperatureColumn.At60)]
    [InlineData(75, 20, TemperatureColumn.At75)]
    [InlineData(90, 20, TemperatureColumn.At75)]
    public void Terminals_count_as_marked_else_60_C_up_to_100_A(int? marked, int circuit, TemperatureColumn column) =>
        TerminalTemperatures.For(marked?.DegC, circuit.A).ShouldBe(column);

    [Theory]
    [InlineData(59, TemperatureColumn.At60)]
    [InlineData(89, TemperatureColumn.At75)]
    [InlineData(90, TemperatureColumn.At90)]
    [InlineData(200, TemperatureColumn.At90)]
    public void Insulation_goes_to_the_warmest_column_that_it_reaches(int rated, TemperatureColumn column)
    {
        TemperatureColumns.Reached(rated.DegC).ShouldBe(column);
        TemperatureColumns.Reached(column.Temperature).ShouldBe(column);
    }
}
