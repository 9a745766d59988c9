using System.Collections.Immutable;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Panels;

/// <summary>What the batteries hold and what is lost on the way.</summary>
public sealed record Battery
{
    /// <summary>Between full and empty.</summary>
    public required WattHours Usable { get; init; }

    /// <summary>The state of charge that is never gone below.</summary>
    public Percent Reserve { get; init; } = Percent.Zero;

    public Percent Efficiency { get; init; } = Percent.Whole;

    /// <summary>What the inverters draw with nothing switched on.</summary>
    public Watts Idle { get; init; } = Watts.Zero;
}

public enum ChargingFrom
{
    Grid,
    Generator,
    Solar,
}

/// <summary>Charging with hysteresis: it starts at one state of charge and stops at a higher one.</summary>
public sealed record Charging
{
    public ChargingFrom From { get; init; } = ChargingFrom.Grid;

    /// <summary>What charging draws from what feeds it.</summary>
    public required Watts Power { get; init; }

    public required Percent StartsAt { get; init; }

    public required Percent StopsAt { get; init; }

    /// <summary>Of what charging draws, what reaches the batteries.</summary>
    public Percent Efficiency { get; init; } = Percent.Whole;

    /// <summary>What the unit takes in on each leg while it charges, loads in pass-through among it.</summary>
    public Amperes? InputLimit { get; init; }
}

/// <summary>A solar day: a half sine of <see cref="Peak"/> with the energy of <see cref="SunHours"/>, or an hourly list.</summary>
public sealed record Solar
{
    public Watts? Peak { get; init; }

    public Hours? SunHours { get; init; }

    /// <summary>Empty, or 24 powers from midnight on.</summary>
    public ImmutableArray<Watts> Hourly { get; init; } = [];
}

/// <summary>The words for what charges a battery.</summary>
public static class ChargingFromWords
{
    extension(ChargingFrom from)
    {
        /// <summary>As the schedule file writes it: `grid`.</summary>
        public string Word => from switch
        {
            ChargingFrom.Grid => "grid",
            ChargingFrom.Generator => "generator",
            ChargingFrom.Solar => "solar",
            _ => throw Unnamed.Of(from),
        };
    }
}
