using System.Collections.Immutable;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Sizing;

/// <summary>From the source's breaker to the bus: each link, with what is ahead of it.</summary>
/// <remarks>
/// A link is weak where the device ahead is larger than it stands. A breaker further down may be of any size: the one ahead
/// protects it.
/// </remarks>
public sealed record SourceChain(ImmutableArray<ChainLink> Links, SourceCapacity? Capacity)
{
    /// <summary>The first link that the device ahead does not keep within its rating.</summary>
    public ChainLink? FirstWeak => Links.FirstOrDefault(link => link.Ok == false);

    public IEnumerable<ChainLink> NotStated => Links.Where(link => !link.IsStated);

    public static SourceChain Of(Schedule schedule, SourceCapacity? capacity) =>
        new([.. new SourceLinks(schedule).All, .. new FeederLinks(schedule).All], capacity);

    /// <summary>The link of a kind; nothing where the schedule has no such link, such as a cord that nobody wrote down.</summary>
    public ChainLink? Of(LinkKind kind) => Links.FirstOrDefault(link => link.Kind == kind);
}
