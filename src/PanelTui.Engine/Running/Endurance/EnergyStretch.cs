namespace PanelTui.Engine.Running.Endurance;

/// <summary>A stretch of time in which load and sun stay as they are: what flows in each hour of it.</summary>
/// <remarks>
/// While it charges, what runs is passed through from what feeds the charger: the charger gives way to it below the input limit
/// of each pole, and what is beyond that is missed. Else the battery carries what runs. At the reserve the battery is held: only what
/// the sun brings is used. A full battery spills.
/// </remarks>
internal sealed class EnergyStretch(EnergySystem system, decimal sun, bool charging)
{
    private readonly decimal _sun = Math.Min(sun, system.SolarLimit);

    /// <summary>What the battery gains in an hour, free to move.</summary>
    public decimal Gain => charging
        ? (system.Charge * system.ChargerEfficiency) + _sun - system.Idle
        : _sun - system.Idle - (system.Load / system.Efficiency);

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
            Wanted = new(system.Load * hours),
            Sun = new(sun * hours),
            Spilled = new((sun - _sun) * hours),
            Idle = new(system.Idle * hours),
        };
        return charging
            ? flow with
            {
                Missed = new((system.Load - system.Passed) * hours),
                Supplied = new((system.Passed + system.Charge) * hours),
                Lost = new(system.Charge * (1 - system.ChargerEfficiency) * hours),
            }
            : flow with { Lost = new(((system.Load / system.Efficiency) - system.Load) * hours) };
    }

    /// <summary>The battery gives what is left above the reserve; with the sun that is less than is wanted.</summary>
    private EnergyFlow Short(decimal hours, decimal left)
    {
        var given = left + (_sun * hours) + (charging ? system.Charge * system.ChargerEfficiency * hours : 0);
        var idle = Math.Min(system.Idle * hours, given);
        var flow = Flow(hours) with { Idle = new(idle), Stored = new(-left) };
        if (charging)
            return flow;
        var served = Math.Min(system.Load * hours, (given - idle) * system.Efficiency);
        return flow with { Missed = new((system.Load * hours) - served), Lost = new(given - idle - served) };
    }
}
