using System.Collections.Immutable;
using PanelTui.Engine.Rules.Branches;
using PanelTui.Engine.Rules.Feeders;
using PanelTui.Engine.Rules.Motors;
using PanelTui.Engine.Rules.Panelboard;
using PanelTui.Engine.Rules.Standby;

namespace PanelTui.Engine.Rules;

/// <summary>The rules there are.</summary>
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
        new NeutralBondedInSubpanelRule(),
        new FeederDeviceBelowDemandRule(),
        new DemandLacksAFigureRule(),
        new MeasuredTooShortRule(),
        new OptionalMethodOutOfPlaceRule(),
        new TransferEquipmentTooSmallRule(),
        new SourceLegOverloadedRule(),
        new SourceDeviceBelowScenarioRule(),
        new LineToLineLoadOnOneLegSourceRule(),
        new MotorOutsideTableRule(),
        new LoadOutOfBoundsRule(),
    ];

    /// <summary>Every finding: errors first, then by space; those about no space lead.</summary>
    public static ImmutableArray<Finding> Check(RuleContext context) =>
    [
        .. All.SelectMany(rule => rule.Check(context))
            .OrderByDescending(finding => finding.Severity)
            .ThenBy(finding => finding.Spaces.Length == 0 ? default : finding.Spaces[0]),
    ];
}
