using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Running.Endurance;

/// <summary>What a course is reckoned with, as plain figures: watts, watt-hours, and shares of 1.</summary>
/// <remarks>A charging power of zero is none. What loads take stays the same over a course, and so does what the input passes on of it.</remarks>
public sealed record EnergySystem
{
    private const decimal Most = 1_000_000_000;

    public required decimal Held { get; init; }

    public required decimal Reserve { get; init; }

    public required decimal Efficiency { get; init; }

    public required decimal Idle { get; init; }

    public decimal ChargingPower { get; init; }

    public decimal ChargerEfficiency { get; init; } = 1;

    public decimal StartsAt { get; init; }

    public decimal StopsAt { get; init; }

    /// <summary>What loads take, on all legs.</summary>
    public required decimal Load { get; init; }

    /// <summary>What of it passes the input while it charges.</summary>
    public decimal Passed { get; init; }

    /// <summary>What is then left of the charging power.</summary>
    public decimal Charge { get; init; }

    /// <summary>What the sun may bring at most, where a charger stands between; far away where none does.</summary>
    public decimal SolarLimit { get; init; } = Most;

    /// <summary>Nothing without a battery.</summary>
    /// <param name="source">The source with its battery and what charges it.</param>
    /// <param name="loads">What they take on each leg.</param>
    /// <param name="system">Its legs take the charger's input limit each.</param>
    /// <param name="charges">Whether the grid or the generator is there to charge.</param>
    public static EnergySystem? Of(StandbySource? source, PerLeg<Watts> loads, PanelSystem system, bool charges)
    {
        if (source?.Battery is not { } battery)
            return null;
        var held = BatteryHours.Held(battery);
        var alone = new EnergySystem
        {
            Held = held,
            Reserve = held * BatteryHours.Whole(battery.Reserve) / 100,
            Efficiency = BatteryHours.Share(battery),
            Idle = Math.Clamp(battery.Idle.Value, 0, Most),
            Load = loads.Values.Sum(leg => leg.Value),
        };
        return (source.Charging, charges) switch
        {
            (null, _) => alone,
            ({ From: ChargingFrom.Solar } sun, _) => alone with { SolarLimit = Math.Clamp(sun.Power.Value, 0, Most) },
            ({ From: ChargingFrom.Grid or ChargingFrom.Generator }, false) => alone,
            ({ From: ChargingFrom.Grid or ChargingFrom.Generator } charging, true) =>
                alone.Charged(charging, ChargingInput.Of(source, charging, loads, system)),
            ({ } charging, _) => throw Unnamed.Of(charging.From),
        };
    }

    private EnergySystem Charged(Charging charging, ChargingInput input) => this with
    {
        ChargingPower = input.Asked.Value,
        ChargerEfficiency = Math.Clamp(charging.Efficiency.Value, 1, 100) / 100,
        StartsAt = Held * BatteryHours.Whole(charging.StartsAt) / 100,
        StopsAt = Held * BatteryHours.Whole(charging.StopsAt) / 100,
        Passed = input.Passed.Value,
        Charge = input.Charge.Value,
    };
}
