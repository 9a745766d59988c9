namespace PanelTui.Engine.Quantities;

/// <summary>An apparent power in volt-amperes [VA]: the quantity a panel schedule adds up.</summary>
/// <remarks>Held as <see cref="decimal"/>: 35 % of 700 VA is 245 VA here, and 244.99999999999997 in a <see cref="double"/>.</remarks>
public readonly record struct VoltAmperes(decimal Value) : IComparable<VoltAmperes>
{
    public static readonly VoltAmperes Zero;

    /// <summary>The upper bound of a last, open tier.</summary>
    public static readonly VoltAmperes Unlimited = new(decimal.MaxValue);

    public static Amperes operator /(VoltAmperes power, Volts volts) => new(power.Value / volts.Value);

    public static VoltAmperes operator /(VoltAmperes power, int parts) => new(power.Value / parts);

    public static VoltAmperes Min(VoltAmperes left, VoltAmperes right) => left <= right ? left : right;

    /// <summary>The real power of this apparent power at a power factor.</summary>
    public Watts At(PowerFactor factor) => new(Value * factor.Value);

    public static VoltAmperes operator +(VoltAmperes left, VoltAmperes right) => new(left.Value + right.Value);

    public static VoltAmperes operator -(VoltAmperes left, VoltAmperes right) => new(left.Value - right.Value);

    public static VoltAmperes operator *(VoltAmperes left, decimal times) => new(left.Value * times);

    public static VoltAmperes operator *(VoltAmperes left, Percent share) => new(left.Value * share.Value / 100);

    public static bool operator <(VoltAmperes left, VoltAmperes right) => left.Value < right.Value;

    public static bool operator >(VoltAmperes left, VoltAmperes right) => left.Value > right.Value;

    public static bool operator <=(VoltAmperes left, VoltAmperes right) => left.Value <= right.Value;

    public static bool operator >=(VoltAmperes left, VoltAmperes right) => left.Value >= right.Value;

    public static VoltAmperes Max(VoltAmperes left, VoltAmperes right) => left >= right ? left : right;

    public int CompareTo(VoltAmperes other) => Value.CompareTo(other.Value);

    /// <summary>The exact value with its unit, as on a nameplate.</summary>
    public override string ToString() => Shown.Plainly(Value, "VA");
}
