using System.Collections.Immutable;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Running.Endurance;

/// <summary>How the state of charge goes on, hour by hour, with the sun and whatever charges.</summary>
public sealed record EnergyCourse
{
    /// <summary>Three days.</summary>
    public const int UsualHours = 72;

    public required Percent From { get; init; }

    public required Percent Reserve { get; init; }

    public required ImmutableArray<CourseHour> Hours { get; init; }

    /// <summary>When loads first went without, in hours from the beginning; nothing where none did.</summary>
    public Hours? FirstMissed { get; init; }

    public EnergyFlow Total => Hours.Aggregate(EnergyFlow.None, (sum, hour) => sum + hour.Flow);

    /// <summary>The lowest state of charge at the end of an hour, or at the beginning.</summary>
    public Percent Lowest => Hours.Select(hour => hour.End).Append(From).Min();

    /// <summary>Nothing without a battery.</summary>
    /// <param name="schedule">The source with its battery, what charges it, and the legs it feeds.</param>
    /// <param name="average">What the loads take on each leg.</param>
    /// <param name="from">The state of charge to begin with.</param>
    /// <param name="startHour">The hour of the day to begin with, 0 to 23.</param>
    /// <param name="charges">Whether the grid or the generator is there to charge; in an outage the grid is not.</param>
    public static EnergyCourse? Of(
        Schedule schedule, PerLeg<Watts> average, Percent from, int startHour = 0, bool charges = true, int hours = UsualHours)
    {
        if (EnergySystem.Of(schedule.Source, average.Select(leg => Watts.Max(leg, Watts.Zero)), schedule.Panel.System, charges) is not { } system)
            return null;
        var walk = new CourseWalk(system, schedule.Source!.Solar, from);
        return new EnergyCourse
        {
            From = new Percent(BatteryHours.Whole(from)),
            Reserve = schedule.Source.Battery!.Reserve,
            Hours = [.. Enumerable.Range(0, hours).Select(hour => walk.Next(hour, (startHour + hour) % SolarDay.Hours))],
            FirstMissed = walk.FirstMissed,
        };
    }
}
