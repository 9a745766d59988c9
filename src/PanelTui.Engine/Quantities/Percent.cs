namespace PanelTui.Engine.Quantities;

/// <summary>A share in per cent: 35 % is held as 35, so that tables read as printed.</summary>
public readonly record struct Percent(decimal Value) : IComparable<Percent>
{
    public static readonly Percent Zero;

    public static readonly Percent Whole = new(100);

    public static bool operator <(Percent left, Percent right) => left.Value < right.Value;

    public static bool operator >(Percent left, Percent right) => left.Value > right.Value;

    public static bool operator <=(Percent left, Percent right) => left.Value <= right.Value;

    public static bool operator >=(Percent left, Percent right) => left.Value >= right.Value;

    public int CompareTo(Percent other) => Value.CompareTo(other.Value);

    public override string ToString() => Shown.Plainly(Value, "%");
}
