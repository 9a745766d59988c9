using System.Collections.Immutable;

namespace PanelTui.Engine.Running.Switching;

/// <summary>Going to standby and back with the equipment that a schedule states.</summary>
/// <remarks>
/// Common practice, no source: the instructions of the equipment and local rules go before it. Each of the three ways leaves
/// nothing open that it opened, save what the next one closes.
/// </remarks>
public sealed record SwitchingPlan
{
    /// <summary>What must never happen, the two supplies joined before all else.</summary>
    public required ImmutableArray<string> Never { get; init; }

    /// <summary>What stays off as long as the source feeds the panel, and why.</summary>
    public required ImmutableArray<string> LeaveOff { get; init; }

    /// <summary>Joining the cable, with both supplies and the sun off; empty where nothing is plugged in, or nothing is known that keeps the supplies apart.</summary>
    public required ImmutableArray<SwitchingStep> Cable { get; init; }

    public required ImmutableArray<SwitchingStep> ToStandby { get; init; }

    public required ImmutableArray<SwitchingStep> Back { get; init; }

    public static SwitchingPlan Of(Assessment assessment)
    {
        var facts = SwitchingFacts.Of(assessment);
        var way = SwitchingWay.Of(facts);
        return new SwitchingPlan
        {
            Never = [.. NeverSteps.Of(facts)],
            LeaveOff = [.. facts.LeaveOff],
            Cable = facts is { IsPluggedIn: true, Kind: not null } ? [.. CableSteps.Of(facts, way)] : [],
            ToStandby = [.. way.ToStandby],
            Back = [.. way.Back],
        };
    }
}
