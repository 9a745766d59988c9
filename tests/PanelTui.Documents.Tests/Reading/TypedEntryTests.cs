using PanelTui.Documents.Reading.Fields;

namespace PanelTui.Documents.Tests.Reading;

/// <summary>What people type, and what the file then says.</summary>
public class TypedEntryTests
{
    [Theory]
    [InlineData("circuits[].breaker", "20A", "20 A")]
    [InlineData("circuits[].breaker", "20", "20 A")]
    [InlineData("circuits[].breaker", "20 amps", "20 A")]
    [InlineData("circuits[].breaker", "20 a", "20 A")]
    [InlineData("panel.main", "60", "60 A")]
    [InlineData("panel.main", "MLO", "lugs")]
    [InlineData("circuits[].length", "12ft", "12 ft")]
    [InlineData("circuits[].length", "12'", "12 ft")]
    [InlineData("circuits[].length", "18 metres", "18 m")]
    [InlineData("circuits[].wire", "12 awg cu", "12 AWG Cu")]
    [InlineData("circuits[].wire", "#6 copper", "6 AWG Cu")]
    [InlineData("feeder.conductor", "1/0 al", "1/0 AWG Al")]
    [InlineData("feeder.conductor", "250 MCM Cu", "250 kcmil Cu")]
    [InlineData("circuits[].loads[].rating", "1/2 hp", "1/2 hp")]
    [InlineData("circuits[].loads[].rating", "1/2", "1/2 hp")]
    [InlineData("panel.fault_current", "2500", "2500 A")]
    [InlineData("circuits[].loads[].rating", "1½HP", "1 1/2 hp")]
    [InlineData("circuits[].loads[].rating", "5kva", "5 kVA")]
    [InlineData("circuits[].loads[].volts", "240", "240 V")]
    [InlineData("circuits[].loads[].start", "6", "6")]
    [InlineData("circuits[].loads[].start", "6X", "6x")]
    [InlineData("circuits[].loads[].start", "g", "code G")]
    [InlineData("circuits[].loads[].duty", "55", "55 %")]
    [InlineData("circuits[].protection", "GFCI", "gfci")]
    [InlineData("circuits[].spare", "y", "yes")]
    [InlineData("source.outlet", "NEMA 14-50R", "14-50")]
    [InlineData("panel.system", "120/240V 1ph 3W", "120/240 V 1ph 3W")]
    [InlineData("source.solar.hourly", "0W,80 watts", "0 W, 80 W")]
    [InlineData("panel.bus", "pound", "pound")]
    [InlineData("panel.bus", "1,500 A", "1,500 A")]
    public void What_is_typed_is_written_as_the_format_wants_it(string key, string typed, string written) =>
        Field(key).Written(typed).ShouldBe(written);

    [Theory]
    [InlineData("circuits[].loads[].rating", "1500", "1500 W · 1500 VA · 1500 A")]
    [InlineData("circuits[].loads[].rating", "12", "12 A · 12 hp · 12 kW · 12 W · 12 kVA · 12 VA")]
    [InlineData("circuits[].loads[].rating", "1/2", "1/2 hp")]
    [InlineData("source.continuous", "5", "5 kW · 5 W")]
    [InlineData("source.battery.usable", "12", "12 kWh · 12 Wh")]
    [InlineData("panel.fault_current", "2500", "2500 A")]
    [InlineData("circuits[].length", "60", "60 ft · 60 m")]
    [InlineData("circuits[].wire", "6", "6 AWG Cu · 6 AWG Al")]
    [InlineData("circuits[].protection", "d", "dual-function")]
    [InlineData("circuits[].loads[].kind", "co", "cooktop · cooling")]
    [InlineData("circuits[].loads[].start", "6", "6x · 6 A")]
    [InlineData("panel.system", "208", "208Y/120 V 3ph 4W")]
    [InlineData("panel.bus", "pound", "")]
    public void What_could_be_several_things_is_asked_for_the_likeliest_first(string key, string typed, string meant) =>
        string.Join(" · ", Field(key).Meant(typed)).ShouldBe(meant);

    [Fact]
    public void Every_value_that_is_offered_can_stand()
    {
        var all = FieldBook.All.SelectMany(field => field.Offered.Select(offered => (field, offered)));
        foreach (var (field, offered) in all.AtLeastOne()) field.WhyNot(offered).ShouldBeNull();
    }

    [Fact]
    public void Every_example_is_written_as_it_stands() =>
        FieldBook.All.Where(field => field.Shape == FieldShape.Value).AtLeastOne().ShouldAllBe(field => field.Written(field.Example) == field.Example);

    [Fact]
    public void Every_key_has_a_name_for_the_screen_that_fits_beside_its_value() =>
        FieldBook.All.AtLeastOne().ShouldAllBe(field => field.Title.Length > 1 && field.Title.Length <= 22);

    private static Field Field(string path) => FieldBook.Find(path).ShouldNotBeNull();
}
