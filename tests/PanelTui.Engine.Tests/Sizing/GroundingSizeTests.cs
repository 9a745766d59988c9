using PanelTui.Engine.Codes;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Sizing;

namespace PanelTui.Engine.Tests.Sizing;

/// <summary>The equipment grounding conductor, 250.122: by the device, larger with larger phases, never larger than they are.</summary>
public class GroundingSizeTests
{
    private static readonly ConductorSize[] Gauges = [ConductorSize.Awg(14), ConductorSize.Awg(8), ConductorSize.Awg(6), ConductorSize.Awg(4)];

    [Fact]
    public void The_device_decides_where_the_phases_are_as_small_as_may_be() =>
        Of(60, least: 6, phases: 6).ShouldBe("10 AWG Cu");

    /// <summary>10 380 x 41 740 / 26 240 = 16 511 circular mils, which 8 AWG has but for the rounding of the table. Derived.</summary>
    [Fact]
    public void Phases_two_sizes_larger_ask_for_a_ground_two_sizes_larger() =>
        Of(60, least: 6, phases: 4).ShouldBe("8 AWG Cu");

    /// <summary>10 380 x 66 360 / 26 240 = 26 250 circular mils: 6 AWG. Derived.</summary>
    [Fact]
    public void Phases_four_sizes_larger_ask_for_four() => Of(60, least: 6, phases: 2).ShouldBe("6 AWG Cu");

    [Fact]
    public void The_ground_is_never_larger_than_the_phases() =>
        Of(60, least: 14, phases: 14).ShouldBe("14 AWG Cu");

    [Fact]
    public void Phases_that_are_too_small_enlarge_nothing() => Of(60, least: 4, phases: 6).ShouldBe("10 AWG Cu");

    [Fact]
    public void Above_the_table_there_is_none() =>
        GroundingSize.Of(2001.A, Copper(6), Copper(6)).Conductor.ShouldBeNull();

    [Theory]
    [InlineData(60, 6, 6, "NEC 2023 Table 250.122")]
    [InlineData(60, 6, 2, "NEC 2023 250.122(B)")]
    [InlineData(60, 14, 14, "NEC 2023 250.122(A)")]
    public void It_rests_on_the_table_on_the_enlargement_or_on_the_phases_themselves(int device, int least, int phases, string cite) =>
        $"{GroundingSize.Of(device.A, Copper(least), Copper(phases)).Section.In(CodeEdition.Nec2023)}".ShouldBe(cite);

    [Fact]
    public void The_feeder_has_one_for_its_larger_device_and_its_enlarged_phases()
    {
        var schedule = Sketch.Of(Sketch.TwoPole(1, Sketch.Of(50.A)));
        var enlarged = schedule with
        {
            Panel = schedule.Panel with { Terminals = 75.DegC },
            Feeder = new Feeder { Ocpd = 60.A, Conductor = Copper(2) },
        };
        var feeder = enlarged.Assessed().Feeder!;
        $"{feeder.GroundingConductor}".ShouldBe("6 AWG Cu");
        enlarged.Assessed().Why("grounding-conductor")!.Steps.Select(step => step.Label).ShouldBe(
        [
            "Grounding conductor: 10 AWG Cu by the device", "Area of the phases against the smallest that would do",
            "Grounding conductor: 6 AWG Cu, enlarged as the phases are",
        ]);
    }

    [Fact]
    public void Sizes_are_ordered_from_thin_to_thick()
    {
        Gauges.ShouldBeInOrder();
        (ConductorSize.Aught(4) > ConductorSize.Aught(1), ConductorSize.OfKcmil(250) > ConductorSize.Aught(4)).ShouldBe((true, true));
        (ConductorSize.Aught(1) > ConductorSize.Awg(1), ConductorSize.Awg(6) <= ConductorSize.Awg(6)).ShouldBe((true, true));
    }

    private static string Of(int device, int least, int phases) =>
        $"{GroundingSize.Of(device.A, Copper(least), Copper(phases)).Conductor}";

    private static Conductor Copper(int gauge) => new(ConductorSize.Awg(gauge), ConductorMetal.Copper);
}
