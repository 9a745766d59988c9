using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Sizing;

/// <summary>The largest overcurrent device that protects a conductor, 240.4.</summary>
/// <param name="RoundsUp">Not on a branch circuit with several receptacles for portable loads.</param>
/// <param name="HoldsSmallLimits">Not for motors and air conditioners, 240.4(G).</param>
public readonly record struct ConductorProtection(bool RoundsUp, bool HoldsSmallLimits, CodeEdition Edition)
{
    public static readonly CodeSection NextSizeUp = Nec.Section("240.4(B)");

    /// <summary>Sends motors and air conditioners to Articles 430 and 440.</summary>
    public static readonly CodeSection Motors = Nec.Section("240.4(G)");

    /// <summary>Above it the conductor must carry what the device is rated, 240.4(C).</summary>
    private static readonly Amperes MostRoundedUp = 800.A;

    /// <summary>By the ampacity alone: the next standard rating, or the one below where that is not allowed.</summary>
    public Amperes ByAmpacity(ConductorFit fit) =>
        RoundsUp && StandardRatings.NextUp(fit.Ampacity, Edition) is { } next && next <= MostRoundedUp
            ? next
            : StandardRatings.NextDown(fit.Ampacity, Edition) ?? Amperes.Zero;

    /// <summary>By the ampacity, and by the limit that a small conductor has whatever its ampacity.</summary>
    public Amperes Largest(ConductorFit fit) =>
        HoldsSmallLimits && SmallConductorLimits.Find(fit.Conductor, Edition) is { } limit && limit < ByAmpacity(fit)
            ? limit
            : ByAmpacity(fit);
}
