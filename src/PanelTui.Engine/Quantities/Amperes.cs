namespace PanelTui.Engine.Quantities;

/// <summary>A current in amperes [A], as a magnitude: breakers, conductors and neutrals are judged by it.</summary>
public readonly record struct Amperes(decimal Value) : IComparable<Amperes>
{
    public static readonly Amperes Zero;

    public static Amperes operator +(Amperes left, Amperes right) => new(left.Value + right.Value);

    public static Amperes operator -(Amperes left, Amperes right) => new(left.Value - right.Value);

    public static Amperes operator *(Amperes left, decimal times) => new(left.Value * times);

    public static Amperes operator *(Amperes left, Percent share) => new(left.Value * share.Value / 100);

    public static bool operator <(Amperes left, Amperes right) => left.Value < right.Value;

    public static bool operator >(Amperes left, Amperes right) => left.Value > right.Value;

    public static bool operator <=(Amperes left, Amperes right) => left.Value <= right.Value;

    public static bool operator >=(Amperes left, Amperes right) => left.Value >= right.Value;

    public static Amperes Max(Amperes left, Amperes right) => left >= right ? left : right;

    public int CompareTo(Amperes other) => Value.CompareTo(other.Value);

    /// <summary>The exact value with its unit, as on a nameplate.</summary>
    public override string ToString() => Shown.Plainly(Value, "A");
}
