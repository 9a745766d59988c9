using PanelTui.Documents.Intents;
using PanelTui.Documents.Tests.Reading;

namespace PanelTui.Documents.Tests.Intents;

/// <summary>What a person types into a field, and the one line of the file that it changes.</summary>
public class SetFieldTests
{
    [Theory]
    [InlineData("/panel/bus", "100 A", "-   bus: 125 A    # from the label\n+   bus: 100 A    # from the label")]
    [InlineData("/panel/bus", "100", "-   bus: 125 A    # from the label\n+   bus: 100 A    # from the label")]
    [InlineData("/circuits/0/wire", "14awg copper", "+     wire: 14 AWG Cu")]
    [InlineData("/panel/main", "lugs", "+   main: lugs")]
    [InlineData("/panel/name", "no", "+   name: \"no\"")]
    [InlineData("/panel/name", "Shed: east", "+   name: \"Shed: east\"")]
    [InlineData("/circuits/0/protection", "GFCI", "+     protection: gfci")]
    [InlineData("/circuits/0/poles", "2", "+     poles: 2")]
    [InlineData("/circuits/1/poles", "", "-     poles: 2")]
    [InlineData("/panel/bus", "", "-   bus: 125 A    # from the label")]
    [InlineData("/panel/tandem_spaces", "17, 18", "+   tandem_spaces: [17, 18]")]
    [InlineData("/feeder/length", "45 ft", "+ feeder:\n+   length: 45 ft")]
    [InlineData(
        "/circuits/0/loads/0/continuous",
        "yes",
        "-       - {kind: lighting, rating: 480 W}\n+       - {kind: lighting, rating: 480 W, continuous: yes}")]
    [InlineData("/scenarios/0/running", "lights", "-     running: [lights, pump]\n+     running: [lights]")]
    [InlineData("/scenarios/0/running", "pump, lights", "-     running: [lights, pump]\n+     running: [pump, lights]")]
    [InlineData("/scenarios/0/running", "all", "-     running: [lights, pump]\n+     running: [all]")]
    [InlineData("/scenarios/0/except", "pump", "+     except: [pump]")]
    [InlineData("/circuits/0/wire", "", "")]
    public void A_field_changes_its_own_line_and_no_other(string path, string text, string difference) =>
        Shed.Difference(SetField.In(Shed.Snapshot, Schedules.Path(path), text)).ShouldBe(difference);

    [Theory]
    [InlineData("/circuits/0/length", "60", "length is \"60\", a number without a unit; write it with its unit, e.g. 60 ft")]
    [InlineData("/panel/spaces", "", "spaces cannot be left out; write a whole number, 1 to 252")]
    [InlineData("/panel/colour", "grey", "the format has no key /panel/colour")]
    [InlineData("/circuits/1/id", "lights", "id is \"lights\", as in line 8; no two circuits may have the same")]
    [InlineData("/circuits/1/id", "", "running names \"pump\", but no circuit has this id")]
    [InlineData("/circuits/0/loads/0/rating", "", "this load has no rating; give one, e.g. rating: 480 W")]
    [InlineData("/circuits/0/loads/0/pole", "2", "pole is 2; the breaker has 1 pole")]
    [InlineData(
        "/scenarios/0/starting", "pmp", "starting names \"pmp\", but no circuit has this id; did you mean pump?")]
    [InlineData("/source/battery/usable", "12 kWh", "source has no kind; give one, e.g. kind: inverters")]
    public void A_value_that_cannot_stand_is_refused_with_the_reason(string path, string text, string reason) =>
        SetField.In(Shed.Snapshot, Schedules.Path(path), text).Refusal.ShouldBe(reason);

    [Fact]
    public void Undo_names_the_accepted_finding_by_its_place_in_the_list_from_one()
    {
        var text = Shed.Text + "accepted:\n  - {rule: gfci-missing, because: seen}\n  - {rule: afci-missing, because: seen}\n";
        var now = Snapshot.Of(PanelTui.Documents.Text.SourceText.FromString(text));
        SetField.In(now, Schedules.Path("/accepted/1/because"), "looked at it").Change!.Title
            .ShouldBe("Set because of accepted finding 2 to looked at it");
    }

    [Fact]
    public void Keys_that_make_sense_only_together_come_together() =>
        Shed.Difference(SetField.In(
            Shed.Snapshot,
            "Charge from the grid",
            (Schedules.Path("/source/kind"), "inverters"),
            (Schedules.Path("/source/charging/power"), "3 kW"),
            (Schedules.Path("/source/charging/starts_at"), "25 %"),
            (Schedules.Path("/source/charging/stops_at"), "30 %")))
            .ShouldBe(
                "+ source:\n+   kind: inverters\n+   charging:\n"
                + "+     power: 3 kW\n+     starts_at: 25 %\n+     stops_at: 30 %");

    [Theory]
    [InlineData("/panel/fault_current", "5 kA", "Set fault current of the panel to 5 kA")]
    [InlineData("/circuits/0/breaker", "20 A", "Set breaker of Sorting lights to 20 A")]
    [InlineData("/circuits/1/poles", "", "Clear poles of Well pump")]
    [InlineData("/circuits/1/loads/0/rating", "2 hp", "Set rating of the motor of Well pump to 2 hp")]
    [InlineData("/scenarios/0/name", "Dawn", "Set name of Night to Dawn")]
    public void A_change_is_called_what_the_user_would_call_it(string path, string text, string title) =>
        SetField.In(Shed.Snapshot, Schedules.Path(path), text).Change.ShouldNotBeNull().Title.ShouldBe(title);
}
