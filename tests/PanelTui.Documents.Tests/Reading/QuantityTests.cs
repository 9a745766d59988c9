using PanelTui.Documents.Reading.Values;

namespace PanelTui.Documents.Tests.Reading;

/// <summary>Quantities as they stand on handles and nameplates, into the units that the engine counts in.</summary>
public class QuantityTests
{
    [Theory]
    [InlineData("20 A", 20)]
    [InlineData("20A", 20)]
    [InlineData("20   a", 20)]
    [InlineData("2.5 kA", 2500)]
    [InlineData("0.5 A", 0.5)]
    [InlineData("2.50000000000000 A", 2.5)] // fifteen digits, the most there may be
    public void A_current_is_read_with_or_without_a_blank_in_any_case(string text, decimal amperes) =>
        Forms.Current.Read(text).Value.Value.ShouldBe(amperes);

    [Theory]
    [InlineData("1.5 kW", 1500)]
    [InlineData("1.5 KW", 1500)]
    [InlineData("900 W", 900)]
    public void A_power_is_read_in_watts_or_kilowatts(string text, decimal watts) =>
        Forms.Power.Read(text).Value.Value.ShouldBe(watts);

    [Theory]
    [InlineData("60 ft", 60)]
    [InlineData("3.048 m", 10)]
    [InlineData("18 m", 59.0551181)]
    public void Metres_become_feet_at_0_3048_to_the_foot(string text, decimal feet) =>
        Forms.Length.Read(text).Value.Value.ShouldBe(feet);

    [Theory]
    [InlineData("75 C", 75)]
    [InlineData("167 F", 75)]
    [InlineData("140 F", 60)]
    [InlineData("194 f", 90)]
    [InlineData("-40 F", -40)]
    public void Fahrenheit_becomes_Celsius_at_nine_fifths(string text, decimal degrees) =>
        Forms.Temperature.Read(text).Value.Value.ShouldBe(degrees);

    [Theory]
    [InlineData("1500 ft2", 1500)]
    [InlineData("140 m2", 1506.94746)]
    [InlineData("9.290304 m2", 100)]
    public void Square_metres_become_square_feet(string text, decimal area) =>
        Forms.Area.Read(text).Value.Value.ShouldBe(area);

    [Theory]
    [InlineData("4.8 kWh", 4800)]
    [InlineData("500 wh", 500)]
    public void An_energy_is_read_in_watt_hours(string text, decimal wattHours) =>
        Forms.Energy.Read(text).Value.Value.ShouldBe(wattHours);

    [Theory]
    [InlineData("4.2", 4.2)]
    [InlineData("4.2 h", 4.2)]
    [InlineData("0", 0)]
    public void Sun_hours_need_no_unit(string text, decimal hours) =>
        new SunHoursForm().Read(text).Value.Value.ShouldBe(hours);

    [Theory]
    [InlineData("480 W", "480 W")]
    [InlineData("1.5 kW", "1500 W")]
    [InlineData("900 VA", "900 VA")]
    [InlineData("1.2 kva", "1200 VA")]
    [InlineData("12 A", "12 A")]
    [InlineData("3 hp", "3 hp")]
    [InlineData("1 1/2 hp", "1-1/2 hp")]
    [InlineData("1-1/2 HP", "1-1/2 hp")]
    [InlineData("3/4 hp", "3/4 hp")]
    public void A_rating_keeps_the_quantity_of_the_nameplate(string text, string rating) =>
        $"{new RatingForm().Read(text).Value}".ShouldBe(rating);

    [Theory]
    [InlineData("6x", "6x")]
    [InlineData("6 X", "6x")]
    [InlineData("2.5x", "2.5x")]
    [InlineData("code G", "code G")]
    [InlineData("Code g", "code G")]
    [InlineData("47 A", "47 A")]
    public void A_start_is_a_factor_a_code_letter_or_a_current(string text, string start) =>
        $"{new StartForm().Read(text).Value}".ShouldBe(start);

    [Theory]
    [InlineData("6 AWG Cu", "6 AWG Cu")]
    [InlineData("6awg cu", "6 AWG Cu")]
    [InlineData("1/0 AWG Al", "1/0 AWG Al")]
    [InlineData("4/0 AWG CCA", "4/0 AWG CCA")]
    [InlineData("250 kcmil Cu", "250 kcmil Cu")]
    [InlineData("250 KCMIL CU", "250 kcmil Cu")]
    public void A_conductor_is_a_size_and_a_metal(string text, string conductor) =>
        $"{new ConductorForm().Read(text).Value}".ShouldBe(conductor);

    [Theory]
    [InlineData("14-50", "14-50")]
    [InlineData("l14-30", "L14-30")]
    [InlineData("TT-30", "TT-30")]
    public void An_outlet_is_named_by_its_configuration(string text, string outlet) =>
        new OutletForm().Read(text).Value.ShouldBe(outlet);
}
