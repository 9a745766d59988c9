using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests;

/// <summary>How figures are written in sentences.</summary>
public class ShownTests
{
    /// <summary>3750 Wh over 1363.3 W are 2.7506 h: 2.8 h would promise what is not there.</summary>
    [Theory]
    [InlineData(2.7506, "2.7 h")]
    [InlineData(2.8, "2.8 h")]
    [InlineData(2.799999, "2.7 h")]
    [InlineData(2.7999999999999, "2.8 h")]
    public void Hours_that_are_left_are_rounded_down(double hours, string shown) =>
        Shown.RoundedDown((decimal)hours, 1, "h").ShouldBe(shown);

    [Theory]
    [InlineData(1, 3, "1/3 hp")]
    [InlineData(1, 2, "1/2 hp")]
    [InlineData(15, 2, "7-1/2 hp")]
    [InlineData(3, 1, "3 hp")]
    [InlineData(7, 10, "0.7 hp")]
    public void A_motor_is_called_as_its_nameplate_has_it(int over, int under, string called) =>
        new Horsepower((decimal)over / under).ToString().ShouldBe(called);

    [Fact]
    public void What_is_stated_is_written_as_stated()
    {
        new VoltAmperes(1234.5m).ToString().ShouldBe("1234.5 VA");
        new OhmsPerKilofoot(0.0285m).ToString().ShouldBe("0.0285 ohm/kft");
    }

    [Fact]
    public void A_third_of_a_source_is_no_row_of_digits()
    {
        new VoltAmperes(100_000m / 3).ToString().ShouldBe("33333 VA");
        new Amperes(50m / 3).ToString().ShouldBe("16.67 A");
        new Percent(2m / 3).ToString().ShouldBe("0.6667 %");
    }
}
