using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Running.Endurance;

/// <summary>Walks a course from hour to hour: the state of charge, and whether charging has started.</summary>
/// <remarks>
/// Within an hour load and sun stay as they are, so each stretch ends exactly where charging starts or stops, where the
/// reserve is reached or the battery is full. After so many of them in one hour none is shorter than a minute, however narrow
/// the hysteresis.
/// </remarks>
internal sealed class CourseWalk(EnergySystem system, Solar? solar, Percent from)
{
    private const int ExactStretches = 240;
    private const decimal Minute = 1m / 60;
    private const decimal Nothing = 1e-9m;

    private decimal _held = system.Held * BatteryHours.Whole(from) / 100;
    private bool _charging;

    public Hours? FirstMissed { get; private set; }

    public CourseHour Next(int hour, int ofDay)
    {
        var (flow, done, charged, stretches) = (EnergyFlow.None, 0m, false, 0);
        var sun = solar?.EnergyIn(ofDay).Value ?? 0;
        while (done < 1)
        {
            SwitchCharging();
            charged |= _charging;
            var stretch = new EnergyStretch(system, sun, _charging);
            var least = stretches++ < ExactStretches ? Nothing : Minute;
            var hours = Math.Min(1 - done, Math.Max(least, ToNext(stretch.Gain)));
            var part = stretch.Over(hours, _held);
            Note(hour + done, part);
            (flow, done, _held) = (flow + part, done + hours, _held + part.Stored.Value);
        }
        return new CourseHour(hour, ofDay, flow, new Percent(system.Held > 0 ? _held / system.Held * 100 : 0), charged);
    }

    private void SwitchCharging() => _charging =
        system.ChargingPower > 0 && (_charging ? _held < system.StopsAt - Nothing : _held <= system.StartsAt + Nothing);

    private void Note(decimal at, EnergyFlow part)
    {
        if (FirstMissed is null && part.Missed.Value > Nothing)
            FirstMissed = new Hours(at);
    }

    /// <summary>Hours until the next thing happens; far away where nothing does.</summary>
    private decimal ToNext(decimal gain) => gain switch
    {
        > 0 => Math.Min(To(system.Held, gain), _charging ? To(system.StopsAt, gain) : 1),
        < 0 => Math.Min(To(system.Reserve, gain), !_charging && system.ChargingPower > 0 ? To(system.StartsAt, gain) : 1),
        _ => 1,
    };

    /// <summary>Only what lies ahead counts; what is further than an hour is an hour away.</summary>
    private decimal To(decimal state, decimal gain)
    {
        var way = state - _held;
        return way * gain > 0 && Math.Abs(way) < Math.Abs(gain) ? way / gain : 1;
    }
}
