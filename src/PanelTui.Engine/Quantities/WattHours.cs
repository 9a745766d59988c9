namespace PanelTui.Engine.Quantities;

/// <summary>An energy in watt-hours [Wh]: what a battery holds.</summary>
public readonly record struct WattHours(decimal Value) : IComparable<WattHours>
{
    public static readonly WattHours Zero;

    public static WattHours operator +(WattHours left, WattHours right) => new(left.Value + right.Value);

    public static WattHours operator -(WattHours left, WattHours right) => new(left.Value - right.Value);

    public static WattHours operator *(WattHours left, decimal times) => new(left.Value * times);

    public static WattHours operator *(WattHours left, Percent share) => new(left.Value * share.Value / 100);

    public static bool operator <(WattHours left, WattHours right) => left.Value < right.Value;

    public static bool operator >(WattHours left, WattHours right) => left.Value > right.Value;

    public static bool operator <=(WattHours left, WattHours right) => left.Value <= right.Value;

    public static bool operator >=(WattHours left, WattHours right) => left.Value >= right.Value;

    public static WattHours Max(WattHours left, WattHours right) => left >= right ? left : right;

    public int CompareTo(WattHours other) => Value.CompareTo(other.Value);

    /// <summary>The exact value with its unit, as on a nameplate.</summary>
    public override string ToString() => Shown.Plainly(Value, "Wh");
}
