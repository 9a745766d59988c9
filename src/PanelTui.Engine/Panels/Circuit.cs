using System.Collections.Immutable;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Panels;

/// <summary>A breaker in its place, and what hangs on it.</summary>
public sealed record Circuit
{
    /// <summary>The stable name that scenarios, comparisons and merges go by.</summary>
    public string? Id { get; init; }

    /// <summary>Its place in the file, from 0: what joins a fact to its lines.</summary>
    public required int Ordinal { get; init; }

    /// <summary>The top space; the rest follow from the poles.</summary>
    public required SpaceNumber Space { get; init; }

    public string Name { get; init; } = "";

    public required Breaker Breaker { get; init; }

    public Conductor? Wire { get; init; }

    /// <summary>One way, from the panel to the farthest load.</summary>
    public Feet? Length { get; init; }

    public ImmutableArray<Load> Loads { get; init; } = [];

    public bool IsSpare { get; init; }

    /// <summary>The name under which circuits share one neutral.</summary>
    public string? Multiwire { get; init; }

    /// <summary>Whether the handles of its one-pole breakers are tied together.</summary>
    public bool Tied { get; init; }

    /// <summary>Whether it stays in its space: back-fed, interlocked, or its wires reach nowhere else.</summary>
    public bool Fixed { get; init; }

    /// <summary>Whether it runs on the standby source unless a scenario says otherwise.</summary>
    public bool Standby { get; init; } = true;

    /// <summary>Its turn to be shed, from 1: the lowest first; nothing sheds after every number.</summary>
    public int? Priority { get; init; }

    /// <summary>The panel it came from, in the user's own words.</summary>
    public string? MovedFrom { get; init; }

    /// <summary>Whether its neutral came along; nothing where nobody wrote it down.</summary>
    public bool? NeutralMoved { get; init; }

    /// <summary>When someone last checked it at the panel.</summary>
    public DateOnly? Verified { get; init; }

    /// <summary>Where its outlets are, for the GFCI and AFCI rules.</summary>
    public ImmutableArray<string> Places { get; init; } = [];

    public IEnumerable<SpaceNumber> Spaces => Breaker.SpacesFrom(Space);

    /// <summary>The leg of each pole, from the top.</summary>
    public ImmutableArray<Leg> Legs(PanelSystem system) => [.. Spaces.Select(system.LegOf)];
}
