using PanelTui.Documents.Reading.Values;
using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Tests.Reading;

/// <summary>What counts when a load's key is not written.</summary>
public class LoadDefaultTests
{
    [Theory]
    [InlineData("motor", "6x")]
    [InlineData("cooling", "6x")]
    [InlineData("heat-pump", "6x")]
    [InlineData("lighting", "1x")]
    [InlineData("kitchen", "1x")]
    public void Motors_start_at_six_times_and_other_loads_at_their_own_current(string kind, string start) =>
        $"{Schedules.Load($"{{kind: {kind}, rating: 5 A}}").Start}".ShouldBe(start);

    [Theory]
    [InlineData("ev", true)]
    [InlineData("lighting", false)]
    public void A_vehicle_charges_for_three_hours_or_more(string kind, bool continuous) =>
        Schedules.Load($"{{kind: {kind}, rating: 5 A}}").Continuous.ShouldBe(continuous);

    [Fact]
    public void A_vehicle_charger_can_be_written_as_not_continuous() =>
        Schedules.Load("{kind: ev, rating: 5 A, continuous: no}").Continuous.ShouldBeFalse();

    [Theory]
    [InlineData("receptacle")]
    [InlineData("small-appliance")]
    [InlineData("laundry")]
    public void Kinds_that_the_code_rates_need_no_rating(string kind) =>
        Schedules.Load($"{{kind: {kind}}}").Rating.ShouldBeNull();

    [Fact]
    public void Every_other_kind_needs_a_rating()
    {
        foreach (var kind in Choices.Load.Allowed.Except(["receptacle", "small-appliance", "laundry"]).AtLeastOne())
        {
            Schedules.Snapshot($"{Schedules.Header}circuits: [{{space: 1, breaker: 20 A, loads: [{{kind: {kind}}}]}}]")
                .Diagnostics.ShouldHaveSingleItem().Code.ShouldBe("missing-key");
        }
    }

    [Fact]
    public void A_pole_of_the_breaker_can_be_named() =>
        Schedules.Circuit(
            "{space: 1, breaker: 20 A, poles: 2, loads: [{kind: other, rating: 1 A, across: line-neutral, pole: 2}]}")
            .Loads[0].ShouldSatisfyAllConditions(load => load.Pole.ShouldBe(
                2), load => load.Across.ShouldBe(Across.LineToNeutral));
}
