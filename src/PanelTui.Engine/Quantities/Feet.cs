namespace PanelTui.Engine.Quantities;

/// <summary>A length in feet [ft], one way: conductor tables and voltage-drop formulas of this trade are per foot.</summary>
/// <remarks>A length given in metres is converted when it is read, at 0.3048 m to the foot.</remarks>
public readonly record struct Feet(decimal Value) : IComparable<Feet>
{
    public static readonly Feet Zero;

    public static Feet operator +(Feet left, Feet right) => new(left.Value + right.Value);

    public static Feet operator -(Feet left, Feet right) => new(left.Value - right.Value);

    public static Feet operator *(Feet left, decimal times) => new(left.Value * times);

    public static Feet operator *(Feet left, Percent share) => new(left.Value * share.Value / 100);

    public static bool operator <(Feet left, Feet right) => left.Value < right.Value;

    public static bool operator >(Feet left, Feet right) => left.Value > right.Value;

    public static bool operator <=(Feet left, Feet right) => left.Value <= right.Value;

    public static bool operator >=(Feet left, Feet right) => left.Value >= right.Value;

    public static Feet Max(Feet left, Feet right) => left >= right ? left : right;

    public int CompareTo(Feet other) => Value.CompareTo(other.Value);

    /// <summary>The exact value with its unit, as on a nameplate.</summary>
    public override string ToString() => Shown.Plainly(Value, "ft");
}
