using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Demand;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Running;
using PanelTui.Engine.Sizing;

namespace PanelTui.Engine.Rules;

/// <summary>What a rule may look at: the schedule and every figure that follows from it.</summary>
/// <remarks>Demand, feeder and transfer are nothing where a figure is missing without which there is no demand.</remarks>
public sealed record RuleContext(
    Schedule Schedule,
    ConnectedLoad Connected,
    DemandResult? Demand,
    FeederSizing? Feeder,
    TransferRating? Transfer,
    ImmutableArray<ScenarioRun> Scenarios)
{
    /// <summary>Every circuit, by its ordinal.</summary>
    public required ImmutableArray<BranchSizing> Branches { get; init; }

    public required SourceChain Chain { get; init; }

    public Panel Panel => Schedule.Panel;

    public CodeEdition Edition => Schedule.Code.Edition;

    public ImmutableArray<Circuit> Circuits => Schedule.Circuits;
}
