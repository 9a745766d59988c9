using System.Collections.Immutable;

namespace PanelTui.Engine.Running.Switching;

/// <summary>Going to standby and back with the equipment that a schedule states.</summary>
/// <remarks>
/// Common practice, no source: the instructions of the equipment and local rules go before it. Each part leaves
/// nothing open that it opened, save what the next one closes.
/// </remarks>
public sealed record SwitchingPlan
{
    /// <summary>What has to be settled before anything is switched; empty where nothing is known to be wrong.</summary>
    public required ImmutableArray<string> Stops { get; init; }

    /// <summary>No grid and no transfer equipment are written down: the source is started and shut down, and nothing changes over.</summary>
    public required bool IsAlone { get; init; }

    /// <summary>What must never happen, the two supplies joined before all else.</summary>
    public required ImmutableArray<string> Never { get; init; }

    /// <summary>What stays off as long as the source feeds the panel, and why.</summary>
    public required ImmutableArray<string> LeaveOff { get; init; }

    /// <summary>Joining the cable, with both supplies and the sun off; empty where nothing is plugged in, where nothing is known that keeps the supplies apart, and where the source is alone and joins it as it starts.</summary>
    public required ImmutableArray<SwitchingStep> Cable { get; init; }

    public required ImmutableArray<SwitchingStep> ToStandby { get; init; }

    public required ImmutableArray<SwitchingStep> Back { get; init; }

    /// <summary>Taking the cable apart, with every supply and the sun off; empty where <see cref="Cable"/> and <see cref="ToStandby"/> join none.</summary>
    public required ImmutableArray<SwitchingStep> Apart { get; init; }

    public static SwitchingPlan Of(Assessment assessment)
    {
        var facts = SwitchingFacts.Of(assessment);
        var way = SwitchingWay.Of(facts);
        return new SwitchingPlan
        {
            Stops = [.. BondStops.Of(facts)],
            IsAlone = facts.IsAlone,
            Never = [.. NeverSteps.Of(facts)],
            LeaveOff = [.. facts.LeaveOff],
            Cable = facts is { IsPluggedIn: true, HasGrid: true } ? [.. CableSteps.Join(facts, way)] : [],
            ToStandby = [.. way.ToStandby],
            Back = [.. way.Back],
            Apart = facts.IsPluggedIn && (facts.HasGrid || facts.IsAlone) ? [.. CableSteps.Apart(facts, way)] : [],
        };
    }
}
