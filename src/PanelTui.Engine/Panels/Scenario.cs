using System.Collections.Immutable;

namespace PanelTui.Engine.Panels;

/// <summary>What runs together on the standby source, by circuit id, and what starts last.</summary>
public sealed record Scenario
{
    /// <summary>Everything that is on standby, for a schedule that names no scenario or equipment that knows of none.</summary>
    public static readonly Scenario AllOnStandby = new() { Name = "All on standby", RunsAll = true };

    public required string Name { get; init; }

    /// <summary>All circuits that are on standby; <see cref="Running"/> then adds the ones it names.</summary>
    public bool RunsAll { get; init; }

    public ImmutableArray<string> Running { get; init; } = [];

    public ImmutableArray<string> Except { get; init; } = [];

    public string? Starting { get; init; }
}
