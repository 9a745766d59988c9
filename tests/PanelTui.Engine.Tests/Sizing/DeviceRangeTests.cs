using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Sizing;

namespace PanelTui.Engine.Tests.Sizing;

/// <summary>How large the breaker of a motor circuit may be, 430.52 and 440.22.</summary>
public class DeviceRangeTests
{
    /// <summary>
    /// 430.52 and its next size up: 1 hp at 230 V, 8 A, 20 A; 3/4 hp at 115 V, 13.8 A, 34.5 A and so 35 A. Derived. That 1/6 hp at
    /// 120 V may share a general circuit of 20 A, 430.53(A), is from memory.
    /// </summary>
    [Theory]
    [InlineData(2, 1, 20, 30)]
    [InlineData(1, 0.75, 35, 50)]
    [InlineData(2, 5, 70, 110)]
    [InlineData(1, 0.1666, 15, 20)]
    [InlineData(2, 0.5, 15, 15)]
    public void A_motor_takes_250_percent_and_the_next_size_up(int poles, double horsepower, int usual, int most) =>
        Range(Sketch.Circuit(1, poles, Sketch.Of(((decimal)horsepower).Hp))).ShouldBe((usual.A, most.A));

    /// <summary>B37: two motors of 40 A, 250 % x 40 + 40 = 140 A and the next size down. Seen in a trade forum.</summary>
    [Fact]
    public void Motors_together_take_the_largest_device_and_the_others_and_the_next_size_down() =>
        Range(Sketch.TwoPole(1, Sketch.Of(40.A, LoadKind.Motor), Sketch.Of(40.A, LoadKind.Motor))).Usual.ShouldBe(125.A);

    /// <summary>440.22: a selection current of 40 A has 175 %, 70 A. Seen in a trade quiz; 225 % is 90 A.</summary>
    [Fact]
    public void A_compressor_takes_175_percent_and_225_at_most() =>
        Range(Sketch.TwoPole(1, Sketch.Of(40.A, LoadKind.Cooling))).ShouldBe((70.A, 90.A));

    /// <summary>A19, Annex D example D8, the fuses of a 34 A motor: 102 A and so 110 A, 59.5 A and so 60 A. From memory.</summary>
    [Theory]
    [InlineData(MotorDeviceKind.NonTimeDelayFuse, 110)]
    [InlineData(MotorDeviceKind.DualElementFuse, 60)]
    public void Fuses_of_a_34_A_motor_round_up(MotorDeviceKind kind, int rating) =>
        StandardRatings.NextUp(34.A * MotorDevice.Of(kind), CodeEdition.Nec2017).ShouldBe(rating.A);

    [Fact]
    public void A_circuit_with_other_loads_too_has_no_such_range() =>
        Of(Sketch.OnePole(1, Sketch.Of(1.Hp), Sketch.Of(100.VA))).ShouldBeNull();

    [Fact]
    public void A_maximum_on_the_nameplate_goes_before_the_range() =>
        Of(Sketch.TwoPole(1, Sketch.Of(16.A, LoadKind.Cooling) with { MaximumOvercurrentProtection = 30.A })).ShouldBeNull();

    [Fact]
    public void An_empty_circuit_has_none() => Of(Sketch.OnePole(1)).ShouldBeNull();

    private static (Amperes Usual, Amperes Most) Range(Circuit circuit) => (Of(circuit)!.Usual, Of(circuit)!.Most);

    private static DeviceRange? Of(Circuit circuit) => Sketch.Of(circuit).Assessed().Branches.Single().Range;
}
