namespace PanelTui.Engine.Quantities;

/// <summary>A duration in seconds [s]: how long a source carries its surge.</summary>
public readonly record struct Seconds(decimal Value) : IComparable<Seconds>
{
    public static readonly Seconds Zero;

    public static Seconds operator +(Seconds left, Seconds right) => new(left.Value + right.Value);

    public static Seconds operator -(Seconds left, Seconds right) => new(left.Value - right.Value);

    public static Seconds operator *(Seconds left, decimal times) => new(left.Value * times);

    public static Seconds operator *(Seconds left, Percent share) => new(left.Value * share.Value / 100);

    public static bool operator <(Seconds left, Seconds right) => left.Value < right.Value;

    public static bool operator >(Seconds left, Seconds right) => left.Value > right.Value;

    public static bool operator <=(Seconds left, Seconds right) => left.Value <= right.Value;

    public static bool operator >=(Seconds left, Seconds right) => left.Value >= right.Value;

    public static Seconds Max(Seconds left, Seconds right) => left >= right ? left : right;

    public int CompareTo(Seconds other) => Value.CompareTo(other.Value);

    /// <summary>The exact value with its unit, as on a nameplate.</summary>
    public override string ToString() => Shown.Plainly(Value, "s");
}
