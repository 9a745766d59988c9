using System.Collections.Immutable;
using PanelTui.Engine.Rules.Branches;
using PanelTui.Engine.Rules.Directory;
using PanelTui.Engine.Rules.Feeders;
using PanelTui.Engine.Rules.Motors;
using PanelTui.Engine.Rules.Panelboard;
using PanelTui.Engine.Rules.Standby;
using PanelTui.Engine.Rules.Wiring;

namespace PanelTui.Engine.Rules;

/// <summary>
/// The rules there are. What one may miss here, and why it is not here, stands in <see cref="NoRules"/>.
/// </summary>
public static class RuleBook
{
    public static readonly ImmutableArray<CodeRule> All =
    [
        new SpaceTakenTwiceRule(),
        new BreakerPastLastSpaceRule(),
        new MorePolesThanLegsRule(),
        new TandemNotListedHereRule(),
        new RatingNotStandardRule(),
        new BusBelowItsSupplyRule(),
        new BusBelowDemandRule(),
        new MainBelowDemandRule(),
        new InterruptingBelowFaultCurrentRule(),
        new NeutralBondedInSubpanelRule(),
        new FeederDeviceBelowDemandRule(),
        new FeederConductorBelowDemandRule(),
        new FeederDeviceAboveConductorRule(),
        new FeederVoltageDropHighRule(),
        new SourceWithoutTransferEquipmentRule(),
        new DemandLacksAFigureRule(),
        new MeasuredTooShortRule(),
        new OptionalMethodOutOfPlaceRule(),
        new TransferEquipmentTooSmallRule(),
        new AutomaticTransferBeyondSourceRule(),
        new InterlockToLookAtRule(),
        new NeutralBondedTwiceRule(),
        new NeutralBondedNowhereRule(),
        new NeutralBondNotRecordedRule(),
        new SourceLegOverloadedRule(),
        new SourceDeviceBelowScenarioRule(),
        new StartBeyondSurgeRule(),
        new MotorsStartTogetherRule(),
        new EmergencyLoadOnStandbyPanelRule(),
        new SurgeWithoutTimeRule(),
        new ChargingBeyondInputRule(),
        new ChargingStopsBelowReserveRule(),
        new InterlockSwitchesNeutralRule(),
        new HoursToReserveRule(),
        new VehicleChargingBeyondSourceRule(),
        new LegsUnevenRule(),
        new LineToLineLoadOnOneLegSourceRule(),
        new CordOrInletBelowSourceBreakerRule(),
        new SourceOutletWithoutNeutralRule(),
        new FieldMadeCordTooSmallRule(),
        new MotorOutsideTableRule(),
        new BreakerAboveMocpRule(),
        new ConductorBelowMcaRule(),
        new MotorConductorTooSmallRule(),
        new BreakerAboveMotorLimitRule(),
        new LoadOutOfBoundsRule(),
        new ConductorNotStatedRule(),
        new BreakerAboveSmallConductorLimitRule(),
        new BreakerAboveConductorRule(),
        new ContinuousLoadAbove80PercentOfBreakerRule(),
        new VoltageDropHighRule(),
        new OneLegSourceAtNeutralBusRule(),
        new SignAtOneLegSourceRule(),
        new SignAtInletRule(),
        new InletToBeOutsideRule(),
        new LowFaultCurrentOnStandbyRule(),
        new SharedNeutralOnOneLegRule(),
        new SharedNeutralWithoutTieRule(),
        new SharedNeutralWithoutPartnerRule(),
        new SharedNeutralOnOneLegSourceRule(),
        new TieWithoutPartnerRule(),
        new MovedCircuitWithoutItsNeutralRule(),
        new NeutralOfMovedCircuitNotRecordedRule(),
        new GfciMissingRule(),
        new AfciMissingRule(),
        new RequiredDwellingCircuitsShedRule(),
        new RunningAboveRatingRule(),
        new DirectoryTextMissingRule(),
        new DirectoryTextVagueRule(),
        new DirectoryTextDuplicateRule(),
        new DirectoryTextTransientRule(),
    ];

    /// <summary>Nothing for a name that no rule has.</summary>
    public static CodeRule? Find(string name) => All.FirstOrDefault(rule => rule.Name == name);

    /// <summary>Every finding: errors first, then by space; those about no space lead.</summary>
    public static ImmutableArray<Finding> Check(RuleContext context) =>
    [
        .. All.SelectMany(rule => rule.Check(context))
            .OrderByDescending(finding => finding.Severity)
            .ThenBy(finding => finding.Spaces.Length == 0 ? default : finding.Spaces[0]),
    ];
}
