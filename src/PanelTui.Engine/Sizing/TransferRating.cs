using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Demand;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Sizing;

/// <summary>What the transfer equipment has to be rated, against what the schedule says it is.</summary>
public sealed record TransferRating
{
    /// <summary>The worst leg's minimum ampacity.</summary>
    public required Amperes MinimumAmpacity { get; init; }

    /// <summary>The device ahead on the normal supply; nothing where none is stated or the equipment has its own.</summary>
    public Amperes? FeederDevice { get; init; }

    /// <summary>The device ahead on the standby supply; nothing where none is stated or the equipment has its own.</summary>
    public Amperes? SourceDevice { get; init; }

    public Amperes? Stated { get; init; }

    public bool HasOwnDevice { get; init; }

    public Amperes Required => Amperes.Max(
        MinimumAmpacity, Amperes.Max(FeederDevice ?? Amperes.Zero, SourceDevice ?? Amperes.Zero));

    /// <summary>The smallest rating made that will do; nothing above 600 A.</summary>
    public Amperes? Standard => TransferRatings.NextUp(Required);

    /// <summary>Nothing where the schedule states no rating.</summary>
    public bool? Ok => Stated is { } stated ? stated >= Required : null;

    public static TransferRating Of(Schedule schedule, DemandResult demand)
    {
        var own = schedule.Transfer?.IntegralOcpd ?? false;
        return new TransferRating
        {
            MinimumAmpacity = demand.MinimumAmpacity,
            FeederDevice = own ? null : schedule.Feeder?.Ocpd,
            SourceDevice = own ? null : schedule.Source?.Ocpd,
            Stated = schedule.Transfer?.Rating,
            HasOwnDevice = own,
        };
    }
}
