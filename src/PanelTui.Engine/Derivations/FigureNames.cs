using System.Collections.Immutable;

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
    public const string TransferRating = "transfer-rating";

    /// <summary>In the order in which they build on one another.</summary>
    public static readonly ImmutableArray<string> All =
    [
        Connected, Legs, Neutral, Imbalance, Demand, DemandNeutral, MinimumAmpacity, FeederDevice, TransferRating,
    ];
}
