using System.Collections.Immutable;
using PanelTui.Engine.Demand;
using PanelTui.Engine.Derivations;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Rules;
using PanelTui.Engine.Running;
using PanelTui.Engine.Running.Endurance;
using PanelTui.Engine.Running.Starting;
using PanelTui.Engine.Sizing;

namespace PanelTui.Engine;

/// <summary>Everything that follows from a schedule: the one door into the engine. It throws for no schedule.</summary>
public sealed record Assessment
{
    public required Schedule Schedule { get; init; }

    public required ConnectedLoad Connected { get; init; }

    /// <summary>Nothing where the method that the schedule names lacks a figure: measured without its peak.</summary>
    public DemandResult? Demand { get; init; }

    /// <summary>Nothing without <see cref="Demand"/>.</summary>
    public FeederSizing? Feeder { get; init; }

    /// <summary>Nothing without <see cref="Demand"/>.</summary>
    public TransferRating? Transfer { get; init; }

    /// <summary>What each circuit has to be, by its ordinal.</summary>
    public required ImmutableArray<BranchSizing> Branches { get; init; }

    /// <summary>From the source to the bus.</summary>
    public required SourceChain Chain { get; init; }

    /// <summary>In the order of the file.</summary>
    public required ImmutableArray<ScenarioRun> Scenarios { get; init; }

    /// <summary>Those that stand open and those that the schedule accepts.</summary>
    public required Judgement Judgement { get; init; }

    /// <summary>Errors first, then by space; without those that the schedule accepts.</summary>
    public ImmutableArray<Finding> Findings => Judgement.Open;

    /// <summary>The findings that the schedule accepts, each with its reason.</summary>
    public ImmutableArray<AcceptedFinding> Accepted => Judgement.Accepted;

    /// <summary>
    /// How every figure of this schedule came about: those of the panel, of each scenario, then of each circuit; worked
    /// out anew when asked.
    /// </summary>
    public ImmutableArray<Derivation> Derivations => [.. Names.Distinct().Select(Why).OfType<Derivation>()];

    /// <summary>The names of the figures that <see cref="Why"/> answers for this schedule.</summary>
    public ImmutableArray<string> Figures => [.. Derivations.Select(derivation => derivation.Figure)];

    private IEnumerable<string> Names =>
    [
        .. FigureNames.All,
        .. Scenarios.SelectMany(run => FigureNames.OfScenarios.Select(figure => FigureNames.OfScenario(figure, run.Name))),
        .. Branches.Select(branch => FigureNames.Branch(branch.Circuit.Space)),
    ];

    public static Assessment Of(Schedule schedule)
    {
        var connected = ConnectedLoad.Of(schedule);
        var demand = DemandBook.Work(schedule, connected);
        var feeder = demand is null ? null : FeederSizing.Of(schedule, demand);
        var transfer = demand is null ? null : TransferRating.Of(schedule, demand);
        ImmutableArray<ScenarioRun> scenarios =
            [.. schedule.Scenarios.Select(scenario => ScenarioRun.Of(scenario, schedule, connected.Loads))];
        var branches = BranchSizing.AllOf(schedule, connected, feeder?.VoltageDrop);
        var chain = SourceChain.Of(schedule, SourceCapacity.Of(schedule, demand, scenarios));
        return new Assessment
        {
            Schedule = schedule,
            Connected = connected,
            Demand = demand,
            Feeder = feeder,
            Transfer = transfer,
            Branches = branches,
            Chain = chain,
            Scenarios = scenarios,
            Judgement = Judgement.Of(
                RuleBook.Check(new RuleContext(schedule, connected, demand, feeder, transfer, scenarios)
                {
                    Branches = branches,
                    Chain = chain,
                }),
                schedule.Accepted),
        };
    }

    /// <summary>
    /// How a figure came about, worked out anew when asked; nothing for a name or a figure that is not there.
    /// </summary>
    public Derivation? Why(string figure) => figure switch
    {
        FigureNames.Connected => Connected.WhyConnected(),
        FigureNames.Legs => Connected.WhyLegs(),
        FigureNames.Neutral => Connected.WhyNeutral(),
        FigureNames.Imbalance => Connected.WhyImbalance(),
        FigureNames.Demand => Demand?.WhyDemand(),
        FigureNames.DemandNeutral => Demand?.WhyNeutral(),
        FigureNames.MinimumAmpacity => Demand?.WhyMinimumAmpacity(),
        FigureNames.FeederDevice => Feeder?.Why(),
        FigureNames.Conductor => Feeder?.WhyConductor(Schedule),
        FigureNames.GroundingConductor => Feeder?.WhyGroundingConductor(),
        FigureNames.VoltageDrop => Feeder?.WhyVoltageDrop(Schedule.Feeder),
        FigureNames.TransferRating => Transfer?.Why(),
        FigureNames.Chain => Chain.Why(),
        _ => WhyOfScenario(figure) ?? BranchAt(FigureNames.SpaceOf(figure))?.Why(figure),
    };

    /// <summary>`starting:Harvest night`; without a name the first scenario answers.</summary>
    private Derivation? WhyOfScenario(string figure)
    {
        foreach (var run in Scenarios)
        {
            foreach (var kind in FigureNames.OfScenarios.Where(kind => figure == kind || figure == FigureNames.OfScenario(kind, run.Name)))
            {
                return kind switch
                {
                    FigureNames.Running => run.WhyRunning(),
                    FigureNames.Starting => run.WhyStarting(Schedule.Code.Edition),
                    _ => run.WhyEndurance(Schedule.Source),
                };
            }
        }
        return null;
    }

    private BranchSizing? BranchAt(SpaceNumber? space) => Branches.FirstOrDefault(branch => branch.Circuit.Space == space);
}
