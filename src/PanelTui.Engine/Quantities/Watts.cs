namespace PanelTui.Engine.Quantities;

/// <summary>A real power in watts [W]: what a source has to give and a battery loses.</summary>
public readonly record struct Watts(decimal Value) : IComparable<Watts>
{
    public static readonly Watts Zero;

    public static Watts operator /(Watts power, int parts) => new(power.Value / parts);

    public static Watts operator +(Watts left, Watts right) => new(left.Value + right.Value);

    public static Watts operator -(Watts left, Watts right) => new(left.Value - right.Value);

    public static Watts operator *(Watts left, decimal times) => new(left.Value * times);

    public static Watts operator *(Watts left, Percent share) => new(left.Value * share.Value / 100);

    public static bool operator <(Watts left, Watts right) => left.Value < right.Value;

    public static bool operator >(Watts left, Watts right) => left.Value > right.Value;

    public static bool operator <=(Watts left, Watts right) => left.Value <= right.Value;

    public static bool operator >=(Watts left, Watts right) => left.Value >= right.Value;

    public static Watts Max(Watts left, Watts right) => left >= right ? left : right;

    public int CompareTo(Watts other) => Value.CompareTo(other.Value);

    /// <summary>The exact value with its unit, as on a nameplate.</summary>
    public override string ToString() => Shown.Plainly(Value, "W");
}
