using PanelTui.Engine.Codes;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Sizing;

/// <summary>The links between the source and the bus, in the order in which the current meets them.</summary>
public enum LinkKind
{
    SourceBreaker,
    Outlet,
    Cord,
    Transfer,
    FeederDevice,
    FeederConductor,
    Main,
    Bus,
}

/// <summary>One link: what it may carry, and the device ahead that has to keep it to that.</summary>
/// <param name="Kind">Which link it is.</param>
/// <param name="Name">What it is, such as `14-50 outlet, cord and inlet`.</param>
/// <param name="Rating">Nothing where it is not stated.</param>
/// <param name="Protects">The largest device that may stand ahead of it, where that is not its rating.</param>
/// <param name="Ahead">The device ahead; nothing where none is stated, and for links that protect others.</param>
/// <param name="Cite">Where the rating comes from.</param>
public sealed record ChainLink(
    LinkKind Kind, string Name, Amperes? Rating, Amperes? Protects, Amperes? Ahead, Citation Cite)
{
    /// <summary>Whether the device ahead keeps it within its rating; nothing where either is not stated.</summary>
    public bool? Ok => Ahead is { } ahead && (Protects ?? Rating) is { } most ? ahead <= most : null;

    public bool IsStated => Rating is not null;
}
