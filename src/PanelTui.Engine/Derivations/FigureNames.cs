using System.Collections.Immutable;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Derivations;

/// <summary>The names under which figures can be asked how they came about.</summary>
public static class FigureNames
{
    public const string Connected = "connected";
    public const string Legs = "legs";
    public const string Neutral = "neutral";
    public const string Imbalance = "imbalance";
    public const string Demand = "demand";
    public const string DemandNeutral = "demand-neutral";
    public const string MinimumAmpacity = "minimum-ampacity";
    public const string FeederDevice = "feeder-device";
    public const string Conductor = "conductor";
    public const string GroundingConductor = "grounding-conductor";
    public const string VoltageDrop = "voltage-drop";
    public const string TransferRating = "transfer-rating";
    public const string Chain = "chain";
    public const string Running = "running";

    private const string BranchPrefix = "branch:";

    /// <summary>In the order in which they build on one another.</summary>
    public static readonly ImmutableArray<string> All =
    [
        Connected, Legs, Neutral, Imbalance, Demand, DemandNeutral, MinimumAmpacity, FeederDevice,
        Conductor, GroundingConductor, VoltageDrop, TransferRating, Chain, Running,
    ];

    /// <summary>The figure of one circuit: `branch:17a` for the one whose top space is 17a.</summary>
    public static string Branch(SpaceNumber space) => $"{BranchPrefix}{space}";

    /// <summary>The space that such a name speaks of; nothing for other names.</summary>
    public static SpaceNumber? SpaceOf(string figure) =>
        figure.StartsWith(BranchPrefix, StringComparison.Ordinal)
        && SpaceNumber.TryParse(figure[BranchPrefix.Length..], out var space)
            ? space
            : null;
}
