namespace PanelTui.Engine.Quantities;

/// <summary>A nominal voltage in volts [V], such as 120 V from line to neutral.</summary>
public readonly record struct Volts(decimal Value) : IComparable<Volts>
{
    public static readonly Volts Zero;

    public static Volts operator +(Volts left, Volts right) => new(left.Value + right.Value);

    public static Volts operator -(Volts left, Volts right) => new(left.Value - right.Value);

    public static Volts operator *(Volts left, decimal times) => new(left.Value * times);

    public static Volts operator *(Volts left, Percent share) => new(left.Value * share.Value / 100);

    public static bool operator <(Volts left, Volts right) => left.Value < right.Value;

    public static bool operator >(Volts left, Volts right) => left.Value > right.Value;

    public static bool operator <=(Volts left, Volts right) => left.Value <= right.Value;

    public static bool operator >=(Volts left, Volts right) => left.Value >= right.Value;

    public static Volts Max(Volts left, Volts right) => left >= right ? left : right;

    public int CompareTo(Volts other) => Value.CompareTo(other.Value);

    /// <summary>The exact value with its unit, as on a nameplate.</summary>
    public override string ToString() => Shown.Plainly(Value, "V");
}
