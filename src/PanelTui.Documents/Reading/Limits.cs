using PanelTui.Engine.Panels;

namespace PanelTui.Documents.Reading;

/// <summary>
/// The largest value that each kind of quantity may have: what is above is a slip of the pen, and says so.
/// </summary>
public static class Limits
{
    /// <summary>In A: the last standard rating of 240.6(A).</summary>
    public const decimal Current = 6_000;

    /// <summary>In A: the highest interrupting rating in common use; common practice, no source.</summary>
    public const decimal FaultCurrent = 200_000;

    /// <summary>In A: a motor on the largest current starting at ten times it.</summary>
    public const decimal LockedRotorCurrent = 60_000;

    /// <summary>In W or VA: 6000 A on three legs at 120 V is 2.16 million.</summary>
    public const decimal Power = 2_500_000;

    /// <summary>In hp: the last row of the motor tables, 500 hp in Table 430.250, from memory.</summary>
    public const decimal Horsepower = 500;

    /// <summary>In V: the code's borderline for the equipment of a panelboard, from memory.</summary>
    public const decimal Voltage = 600;

    /// <summary>In ft: about two miles, beyond which no feeder at these voltages carries anything.</summary>
    public const decimal Length = 10_000;

    /// <summary>In ft2: a building of a thousand feet by a thousand.</summary>
    public const decimal Area = 1_000_000;

    /// <summary>
    /// In degrees C: above the highest insulation rating of the conductor tables, 250 C, from memory.
    /// </summary>
    public const decimal Temperature = 250;

    /// <summary>In degrees C: colder than any place where people wire panels.</summary>
    public const decimal Coldest = -60;

    /// <summary>In Wh: a thousand large house batteries.</summary>
    public const decimal Energy = 10_000_000;

    /// <summary>In s: what a source carries for more than an hour is no surge.</summary>
    public const decimal SurgeTime = 3_600;

    /// <summary>In h: a day has no more.</summary>
    public const decimal SunHours = 24;

    /// <summary>Ten years of demand: older records tell of another load.</summary>
    public const int MeasuredDays = 3_650;

    /// <summary>Times the full-load current: a good three times the usual six.</summary>
    public const decimal StartFactor = 20;

    /// <summary>Conductors in one raceway: far beyond the last step of the adjustment table, 41.</summary>
    public const int CurrentCarrying = 200;

    /// <summary>How many alike, and how many receptacle yokes: more would not fit on one breaker.</summary>
    public const int Count = 1_000;

    /// <summary>Circuits in one file: every space of the largest panel taken by a tandem.</summary>
    public const int Circuits = 2 * SpaceNumber.Most;

    /// <summary>Turns in which circuits shed: no more than there are circuits.</summary>
    public const int Priority = Circuits;

    public const int LoadsOfOneCircuit = 100;

    public const int Scenarios = 100;

    /// <summary>Accepted findings: more are accepted by the rule than by the space.</summary>
    public const int Accepted = 200;

    /// <summary>Characters of a name or a note: more than a label or a line of the directory holds.</summary>
    public const int TextLength = 400;

    /// <summary>Characters of an id.</summary>
    public const int IdLength = 60;
}
