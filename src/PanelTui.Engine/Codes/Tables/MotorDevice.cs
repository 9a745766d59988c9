using System.Collections.Immutable;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>What protects a motor's branch circuit against short circuits and ground faults.</summary>
public enum MotorDeviceKind
{
    NonTimeDelayFuse,
    DualElementFuse,
    InstantaneousBreaker,
    InverseTimeBreaker,
}

/// <summary>Largest branch-circuit device of a motor, in per cent of its full-load current: single-phase and squirrel-cage.</summary>
public static class MotorDevice
{
    public static readonly CodeSection Section = Nec.Section("Table 430.52");

    /// <summary>In the printed order of the columns.</summary>
    public static readonly ImmutableArray<(MotorDeviceKind Kind, Percent Share)> Columns =
    [
        (MotorDeviceKind.NonTimeDelayFuse, 300.Pct),
        (MotorDeviceKind.DualElementFuse, 175.Pct),
        (MotorDeviceKind.InstantaneousBreaker, 800.Pct),
        (MotorDeviceKind.InverseTimeBreaker, 250.Pct),
    ];

    private static readonly Amperes LargeMotor = 100.A;

    /// <summary>Inverse-time breakers are what panelboards hold.</summary>
    public static Percent Breaker => Of(MotorDeviceKind.InverseTimeBreaker);

    public static Percent Of(MotorDeviceKind kind) => Columns[(int)kind].Share;

    /// <summary>A breaker that lets the motor start: 400 % up to 100 A, and, from memory, 300 % above.</summary>
    public static Percent MostBreaker(Amperes fullLoad) => fullLoad <= LargeMotor ? 400.Pct : 300.Pct;
}
