using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Sizing;

/// <summary>The links that only the standby supply has: the source's breaker, and what brings its power to the building.</summary>
internal sealed class SourceLinks(Schedule schedule)
{
    private readonly StandbySource? _source = schedule.Source;

    private readonly OutletConfiguration? _outlet = OutletConfigurations.Find(schedule.Source?.Outlet);

    public IEnumerable<ChainLink> All => _source?.Cord is { } cord ? [Breaker, Outlet, Cord(cord)] : [Breaker, Outlet];

    private ChainLink Breaker => new(
        LinkKind.SourceBreaker, "the source's breaker", _source?.Ocpd, null, null, Citation.Schedule);

    private ChainLink Outlet => new(
        LinkKind.Outlet,
        _source?.Outlet is { } name ? $"the {name} outlet, cord and inlet" : "the outlet, cord and inlet",
        _outlet?.Rating,
        null,
        _source?.Ocpd,
        _outlet?.Cite ?? OutletConfigurations.Cite);

    /// <summary>Two blades that carry current count as two conductors; more, or not known, as three.</summary>
    private ChainLink Cord(Conductor cord)
    {
        var three = _outlet is not { Poles: 2 };
        return new ChainLink(
            LinkKind.Cord,
            $"a field-made cord of {cord}",
            CordAmpacity.Find(cord, three),
            null,
            _source?.Ocpd ?? _outlet?.Rating,
            CordAmpacity.SectionFor(cord, three).In(schedule.Code.Edition));
    }
}
