namespace PanelTui.Engine.Running.Endurance;

/// <summary>A stretch of time in which load and sun stay as they are: what flows in each hour of it.</summary>
/// <remarks>
/// While it charges, what runs is passed through from what feeds the charger: the charger gives way to it below the input limit,
/// and what is beyond the limit is missed. Else the battery carries what runs. At the reserve the battery is held: only what
/// the sun brings is used. A full battery spills.
/// </remarks>
internal sealed class EnergyStretch(EnergySystem system, decimal load, decimal sun, bool charging)
{
    private readonly decimal _sun = Math.Min(sun, system.SolarLimit);

    private decimal Passed => Math.Min(load, system.InputLimit);

    private decimal Charge => Math.Min(system.ChargingPower, system.InputLimit - Passed);

    /// <summary>What the battery gains in an hour, free to move.</summary>
    public decimal Gain => charging
        ? (Charge * system.ChargerEfficiency) + _sun - system.Idle
        : _sun - system.Idle - (load / system.Efficiency);

    /// <summary>The flows of so many hours, from so much energy held, never above full and never drawn below the reserve.</summary>
    public EnergyFlow Over(decimal hours, decimal held)
    {
        var (free, to) = (Gain * hours, held + (Gain * hours));
        if (to > system.Held)
            return Flow(hours) with { Stored = new(system.Held - held), Spilled = new(((sun - _sun) * hours) + to - system.Held) };
        var floor = Math.Min(held, system.Reserve);
        return to >= floor || free >= 0 ? Flow(hours) with { Stored = new(free) } : Short(hours, held - floor);
    }

    private EnergyFlow Flow(decimal hours)
    {
        var flow = new EnergyFlow
        {
            Wanted = new(load * hours),
            Sun = new(sun * hours),
            Spilled = new((sun - _sun) * hours),
            Idle = new(system.Idle * hours),
        };
        return charging
            ? flow with
            {
                Missed = new((load - Passed) * hours),
                Supplied = new((Passed + Charge) * hours),
                Lost = new(Charge * (1 - system.ChargerEfficiency) * hours),
            }
            : flow with { Lost = new(((load / system.Efficiency) - load) * hours) };
    }

    /// <summary>The battery gives what is left above the reserve; with the sun that is less than is wanted.</summary>
    private EnergyFlow Short(decimal hours, decimal left)
    {
        var given = left + (_sun * hours) + (charging ? Charge * system.ChargerEfficiency * hours : 0);
        var idle = Math.Min(system.Idle * hours, given);
        var flow = Flow(hours) with { Idle = new(idle), Stored = new(-left) };
        if (charging)
            return flow;
        var served = Math.Min(load * hours, (given - idle) * system.Efficiency);
        return flow with { Missed = new((load * hours) - served), Lost = new(given - idle - served) };
    }
}
