using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Running.Endurance;

/// <summary>Where energy came from and went to over some time, all in watt-hours.</summary>
/// <remarks>
/// What comes in is <see cref="Sun"/> and <see cref="Supplied"/>; it goes to what ran, to what is lost, and into the battery:
/// <c>Sun + Supplied = Wanted - Missed + Spilled + Idle + Lost + Stored</c>.
/// </remarks>
public sealed record EnergyFlow
{
    public static readonly EnergyFlow None = new();

    /// <summary>What the loads ask for.</summary>
    public WattHours Wanted { get; init; }

    /// <summary>What they asked for and did not get.</summary>
    public WattHours Missed { get; init; }

    /// <summary>What the sun offered.</summary>
    public WattHours Sun { get; init; }

    /// <summary>What of it nothing could take: the battery was full.</summary>
    public WattHours Spilled { get; init; }

    /// <summary>From the grid or generator, for the charger and for what runs in pass-through.</summary>
    public WattHours Supplied { get; init; }

    public WattHours Idle { get; init; }

    /// <summary>On the way out of the battery, and in the charger.</summary>
    public WattHours Lost { get; init; }

    /// <summary>What the battery holds more than before; below zero where it holds less.</summary>
    public WattHours Stored { get; init; }

    public WattHours Served => Wanted - Missed;

    public static EnergyFlow operator +(EnergyFlow left, EnergyFlow right) => new()
    {
        Wanted = left.Wanted + right.Wanted,
        Missed = left.Missed + right.Missed,
        Sun = left.Sun + right.Sun,
        Spilled = left.Spilled + right.Spilled,
        Supplied = left.Supplied + right.Supplied,
        Idle = left.Idle + right.Idle,
        Lost = left.Lost + right.Lost,
        Stored = left.Stored + right.Stored,
    };
}
