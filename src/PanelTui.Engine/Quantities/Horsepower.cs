namespace PanelTui.Engine.Quantities;

/// <summary>A motor's output rating in horsepower [hp]; its current comes from a table, not from 746 W.</summary>
public readonly record struct Horsepower(decimal Value) : IComparable<Horsepower>
{
    public static bool operator <(Horsepower left, Horsepower right) => left.Value < right.Value;

    public static bool operator >(Horsepower left, Horsepower right) => left.Value > right.Value;

    public static bool operator <=(Horsepower left, Horsepower right) => left.Value <= right.Value;

    public static bool operator >=(Horsepower left, Horsepower right) => left.Value >= right.Value;

    public int CompareTo(Horsepower other) => Value.CompareTo(other.Value);

    public override string ToString() => Shown.Exactly(Value, "hp");
}
