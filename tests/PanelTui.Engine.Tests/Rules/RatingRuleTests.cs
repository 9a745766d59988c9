using PanelTui.Engine.Codes;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Tests.Rules;

/// <summary>Ratings against the standard list, the supply and the demand.</summary>
public class RatingRuleTests
{
    [Fact]
    public void A_22_A_breaker_is_no_standard_rating() =>
        Sketch.Of(Breaker(22.A)).ShouldBreak(
            "rating-not-standard",
            "The breaker of Circuit 1 at space 1 is 22 A, which is no standard rating; the nearest are 20 A and 25 A.");

    [Theory]
    [InlineData(15)]
    [InlineData(60)]
    public void Standard_ratings_pass(int rating) => Sketch.Of(Breaker(rating.A)).ShouldPass("rating-not-standard");

    [Fact]
    public void A_10_A_breaker_is_standard_from_2023_on()
    {
        var schedule = Sketch.Of(Breaker(10.A));
        schedule.ShouldPass("rating-not-standard");
        (schedule with { Code = new CodeBasis { Edition = CodeEdition.Nec2020 } }).ShouldBreak(
            "rating-not-standard",
            "The breaker of Circuit 1 at space 1 is 10 A, which is no standard rating; the smallest is 15 A.");
    }

    [Fact]
    public void Main_and_feeder_device_are_held_to_the_list_too() =>
        Judge.Findings(Supplied(main: 65, feeder: 85), "rating-not-standard").Select(finding => finding.Message).ShouldBe(
        [
            "The main breaker is 65 A, which is no standard rating; the nearest are 60 A and 70 A.",
            "The feeder's overcurrent device is 85 A, which is no standard rating; the nearest are 80 A and 90 A.",
        ]);

    [Theory]
    [InlineData(100, 100)]
    [InlineData(125, 60)]
    public void A_bus_as_large_as_the_feeder_device_is_protected(int bus, int feeder) =>
        Supplied(bus: bus, feeder: feeder).ShouldPass("bus-below-its-supply");

    [Fact]
    public void A_bus_below_the_feeder_device_is_not_protected() =>
        Supplied(bus: 60, feeder: 70).ShouldBreak(
            "bus-below-its-supply",
            "The bus is rated 60 A; the feeder's overcurrent device is 70 A, and nothing of 60 A or less protects it.");

    [Fact]
    public void A_main_no_larger_than_the_bus_protects_it() =>
        Supplied(bus: 60, feeder: 100, main: 60).ShouldPass("bus-below-its-supply");

    [Fact]
    public void A_main_larger_than_the_bus_does_not() =>
        Supplied(bus: 60, feeder: 100, main: 70).ShouldBreak(
            "bus-below-its-supply",
            "The bus is rated 60 A; the feeder's overcurrent device is 100 A, and nothing of 60 A or less protects it.");

    [Fact]
    public void A_device_ahead_protects_behind_a_larger_main() =>
        Supplied(bus: 60, feeder: 60, main: 100).ShouldPass("bus-below-its-supply");

    [Fact]
    public void The_standby_supply_counts_too() =>
        Supplied(bus: 60, feeder: 60, source: 70).ShouldBreak(
            "bus-below-its-supply",
            "The bus is rated 60 A; the source's breaker is 70 A, and nothing of 60 A or less protects it.");

    [Fact]
    public void Alone_a_main_larger_than_the_bus_is_reported() =>
        Supplied(bus: 60, main: 100).ShouldBreak(
            "bus-below-its-supply",
            "The bus is rated 60 A; its main breaker is 100 A, and nothing of 60 A or less protects it.");

    [Theory]
    [InlineData("bus-below-demand", "The worst leg asks for 60.001 A; the bus is rated 60 A.")]
    [InlineData("main-below-demand", "The worst leg asks for 60.001 A; the main breaker is 60 A.")]
    [InlineData("feeder-device-below-demand", "The worst leg asks for 60.001 A; the feeder's device is 60 A.")]
    public void A_rating_below_the_minimum_ampacity_is_reported(string rule, string message)
    {
        Supplied(bus: 60, main: 60, feeder: 60, load: 60).ShouldPass(rule);
        Supplied(bus: 60, main: 60, feeder: 60, load: 60.001m).ShouldBreak(rule, message);
    }

    [Fact]
    public void Continuous_load_counts_125_percent_against_the_main() =>
        Supplied(main: 60, load: 50, continuous: true).ShouldBreak(
            "main-below-demand", "The worst leg asks for 62.5 A; the main breaker is 60 A.");

    [Fact]
    public void Main_lugs_have_no_rating_to_hold_against_the_demand() =>
        Supplied(load: 300).ShouldPass("main-below-demand");

    private static Circuit Breaker(Amperes rating) => Sketch.OnePole(1) with { Breaker = new Breaker(rating) };

    private static Schedule Supplied(
        int? bus = null, int? main = null, int? feeder = null, int? source = null, decimal load = 0, bool continuous = false)
    {
        var schedule = Sketch.Of(Sketch.TwoPole(1, Sketch.Of(load.A) with { Continuous = continuous }));
        return schedule with
        {
            Panel = schedule.Panel with
            {
                Bus = bus?.A,
                Main = main is { } rating ? MainDevice.BreakerOf(rating.A) : MainDevice.Lugs,
            },
            Feeder = new Feeder { Ocpd = feeder?.A },
            Source = new StandbySource { Kind = SourceKind.Generator, Ocpd = source?.A },
        };
    }
}
