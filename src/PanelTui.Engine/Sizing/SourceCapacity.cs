using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Demand;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;

namespace PanelTui.Engine.Sizing;

/// <summary>Which load decides how large the source has to be.</summary>
public enum CapacityBasis
{
    /// <summary>By hand: what the user means to run at one time.</summary>
    Selected,

    /// <summary>By itself, with nothing to shed loads: all of the calculated load.</summary>
    WholeLoad,

    /// <summary>By itself, with load management: the most that it lets run.</summary>
    Managed,
}

/// <summary>What the source has to carry by 702.4, against what it is said to give.</summary>
/// <param name="Basis">Which load decides.</param>
/// <param name="Scenario">The scenario that asks most of a leg; nothing for the whole load.</param>
/// <param name="Needed">On each leg; the calculated load in VA counts as watts.</param>
/// <param name="Limit">What is stated, on a leg and in all.</param>
/// <param name="Edition">Which the citation follows.</param>
public sealed record SourceCapacity(
    CapacityBasis Basis, string? Scenario, PerLeg<Watts> Needed, SourceLimit Limit, CodeEdition Edition)
{
    private static readonly CodeSection ByHand = Nec.Section((2017, "702.4(B)(1)"), (2023, "702.4(A)(1)"));

    private static readonly CodeSection ByItself = Nec.Section((2017, "702.4(B)(2)"), (2023, "702.4(A)(2)"));

    public Citation Cite => Section.In(Edition);

    private CodeSection Section => Basis switch
    {
        CapacityBasis.Selected => ByHand,
        CapacityBasis.WholeLoad or CapacityBasis.Managed => ByItself,
        _ => throw Unnamed.Of(Basis),
    };

    /// <summary>Nothing without a source, and without a scenario or a calculated load to go by.</summary>
    public static SourceCapacity? Of(Schedule schedule, DemandResult? demand, ImmutableArray<ScenarioRun> scenarios)
    {
        var edition = schedule.Code.Edition;
        var limit = SourceLimit.Of(schedule.Source, schedule.Panel.System);
        var basis = BasisOf(schedule.Transfer);
        return (schedule.Source, basis, demand) switch
        {
            (null, _, _) => null,
            (_, CapacityBasis.WholeLoad, { } load) => new(CapacityBasis.WholeLoad, null, WattsOf(load), limit, edition),
            (_, CapacityBasis.WholeLoad, null) => null,
            (_, CapacityBasis.Selected or CapacityBasis.Managed, _) => Heaviest(scenarios) is { } run
                ? new(basis, run.Name, run.Legs.Select(leg => leg.Running), limit, edition)
                : null,
            _ => throw Unnamed.Of(basis),
        };
    }

    private static CapacityBasis BasisOf(TransferEquipment? transfer) => transfer?.Kind switch
    {
        TransferKind.Automatic => transfer.LoadManagement ? CapacityBasis.Managed : CapacityBasis.WholeLoad,
        TransferKind.Manual or TransferKind.Interlock or null => CapacityBasis.Selected,
        var kind => throw Unnamed.Of(kind),
    };

    private static ScenarioRun? Heaviest(ImmutableArray<ScenarioRun> scenarios) =>
        scenarios.MaxBy(run => run.Legs.Values.Max(leg => leg.Running));

    private static PerLeg<Watts> WattsOf(DemandResult demand) => PerLeg.Of(
        demand.Legs.System, leg => new Watts(demand.Legs.VoltAmperesOn(leg).Value));
}
