using PanelTui.Engine.Codes;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Sizing;

namespace PanelTui.Engine.Tests.Sizing;

/// <summary>From the source to the bus: each link against the device ahead, and the first weak one by name.</summary>
public class SourceChainTests
{
    private static readonly Conductor Six = new(ConductorSize.Awg(6), ConductorMetal.Copper);

    [Fact]
    public void A_chain_that_is_nowhere_weak_names_no_link()
    {
        Chain(Whole()).FirstWeak.ShouldBeNull();
        Chain(Whole()).NotStated.ShouldBeEmpty();
        Chain(Whole()).Links.Select(link => link.Kind).ShouldBe(Enum.GetValues<LinkKind>());
    }

    [Fact]
    public void The_first_weak_link_is_named_though_more_follow()
    {
        var weak = Chain(Whole(source: 70)).FirstWeak!;
        (weak.Name, weak.Rating, weak.Ahead).ShouldBe(("the 14-50 outlet, cord and inlet", 50.A, 70.A));
    }

    [Fact]
    public void Transfer_equipment_is_held_against_both_supplies() =>
        Chain(Whole(feeder: 70)).FirstWeak!.Kind.ShouldBe(LinkKind.Transfer);

    [Fact]
    public void A_device_of_its_own_protects_it_and_the_feeder()
    {
        var schedule = Whole(feeder: 100);
        Chain(schedule with { Transfer = schedule.Transfer! with { IntegralOcpd = true } }).FirstWeak.ShouldBeNull();
    }

    [Fact]
    public void Conductors_may_have_the_next_rating_ahead_of_them()
    {
        var schedule = Whole(feeder: 70) with { Transfer = new TransferEquipment { Rating = 100.A } };
        Chain(schedule).FirstWeak.ShouldBeNull();
        Chain(Whole(feeder: 80) with { Transfer = new TransferEquipment { Rating = 100.A } }).FirstWeak!.Kind
            .ShouldBe(LinkKind.FeederConductor);
    }

    [Fact]
    public void A_smaller_main_protects_the_bus()
    {
        var schedule = Whole();
        Chain(schedule with { Panel = schedule.Panel with { Bus = 60.A } }).FirstWeak.ShouldBeNull();
        Chain(schedule with { Panel = schedule.Panel with { Bus = 50.A } }).FirstWeak!.Kind.ShouldBe(LinkKind.Bus);
    }

    [Fact]
    public void A_breaker_further_down_is_no_weak_link() =>
        Chain(Whole(source: 50, feeder: 60)).Of(LinkKind.Main)!.Ok.ShouldBeNull();

    [Fact]
    public void What_is_missing_is_said_to_be_not_stated()
    {
        var steps = Sketch.Of().Assessed().Why("chain")!.Steps;
        steps.Count(step => step.Label.EndsWith(": not stated", StringComparison.Ordinal)).ShouldBe(7);
        steps[^1].Label.ShouldBe("No weak link among those stated, 7 not stated; the smallest");
        steps[^1].Unit.ShouldBe("A");
    }

    [Fact]
    public void The_weak_link_stands_in_the_derivation()
    {
        var labels = Whole(source: 70).Assessed().Why("chain")!.Steps.Select(step => step.Label).ToArray();
        labels.ShouldContain("The 14-50 outlet, cord and inlet: weak, 70 A ahead");
        labels[^1].ShouldBe("First weak link: the 14-50 outlet, cord and inlet");
    }

    [Theory]
    [InlineData(TransferKind.Manual, false, CapacityBasis.Selected, 1000)]
    [InlineData(TransferKind.Interlock, true, CapacityBasis.Selected, 1000)]
    [InlineData(TransferKind.Automatic, true, CapacityBasis.Managed, 1000)]
    [InlineData(TransferKind.Automatic, false, CapacityBasis.WholeLoad, 3000)]
    public void Who_switches_decides_what_the_source_has_to_carry(TransferKind kind, bool managed, CapacityBasis basis, int watts)
    {
        var capacity = Chain(Cabin(kind, managed)).Capacity!;
        (capacity.Basis, capacity.Needed[Leg.A]).ShouldBe((basis, watts.W));
    }

    [Fact]
    public void Without_a_scenario_nothing_says_what_the_source_has_to_carry()
    {
        var cabin = Cabin(TransferKind.Manual, managed: false);
        Chain(cabin with { Scenarios = [] }).Capacity.ShouldBeNull();
        Chain(cabin with { Source = null }).Capacity.ShouldBeNull();
    }

    [Theory]
    [InlineData(CodeEdition.Nec2020, TransferKind.Manual, "NEC 2020 702.4(B)(1)")]
    [InlineData(CodeEdition.Nec2023, TransferKind.Manual, "NEC 2023 702.4(A)(1)")]
    [InlineData(CodeEdition.Nec2020, TransferKind.Automatic, "NEC 2020 702.4(B)(2)")]
    [InlineData(CodeEdition.Nec2023, TransferKind.Automatic, "NEC 2023 702.4(A)(2)")]
    public void The_section_on_capacity_moved_in_2023(CodeEdition edition, TransferKind kind, string cite) =>
        $"{Chain(Cabin(kind, managed: false) with { Code = new CodeBasis { Edition = edition } }).Capacity!.Cite}".ShouldBe(cite);

    private static SourceChain Chain(Schedule schedule) => schedule.Assessed().Chain;

    private static Schedule Whole(int source = 50, int feeder = 60) => new()
    {
        Panel = new Panel
        {
            System = PanelSystem.SplitPhase, Spaces = 20, Bus = 125.A, Main = MainDevice.BreakerOf(60.A), Terminals = 75.DegC,
        },
        Source = new StandbySource
        {
            Kind = SourceKind.Inverters,
            Outlet = "14-50",
            Ocpd = source.A,
            Cord = new Conductor(ConductorSize.Awg(4), ConductorMetal.Copper),
        },
        Transfer = new TransferEquipment { Rating = 60.A },
        Feeder = new Feeder { Ocpd = feeder.A, Conductor = Six },
    };

    /// <summary>3000 W in all by the method; 1000 W of them in the scenario.</summary>
    private static Schedule Cabin(TransferKind kind, bool managed) => Sketch
        .Of(Sketch.OnePole(1, Sketch.Of(1000.W)), Sketch.OnePole(2, Sketch.Of(2000.W)))
        .By(DemandMethodName.NonDwelling)
        .With(new Scenario { Name = "Night", Running = ["c1"] }) with
    {
        Source = new StandbySource { Kind = SourceKind.Generator },
        Transfer = new TransferEquipment { Kind = kind, LoadManagement = managed },
    };
}
