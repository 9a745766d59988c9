namespace PanelTui.Engine.Quantities;

/// <summary>A floor area in square feet [ft2]: general lighting is counted by it.</summary>
/// <remarks>An area given in square metres is converted when it is read.</remarks>
public readonly record struct SquareFeet(decimal Value) : IComparable<SquareFeet>
{
    public static readonly SquareFeet Zero;

    public static SquareFeet operator +(SquareFeet left, SquareFeet right) => new(left.Value + right.Value);

    public static SquareFeet operator -(SquareFeet left, SquareFeet right) => new(left.Value - right.Value);

    public static SquareFeet operator *(SquareFeet left, decimal times) => new(left.Value * times);

    public static SquareFeet operator *(SquareFeet left, Percent share) => new(left.Value * share.Value / 100);

    public static bool operator <(SquareFeet left, SquareFeet right) => left.Value < right.Value;

    public static bool operator >(SquareFeet left, SquareFeet right) => left.Value > right.Value;

    public static bool operator <=(SquareFeet left, SquareFeet right) => left.Value <= right.Value;

    public static bool operator >=(SquareFeet left, SquareFeet right) => left.Value >= right.Value;

    public static SquareFeet Max(SquareFeet left, SquareFeet right) => left >= right ? left : right;

    public int CompareTo(SquareFeet other) => Value.CompareTo(other.Value);

    /// <summary>The exact value with its unit, as on a nameplate.</summary>
    public override string ToString() => Shown.Plainly(Value, "ft2");
}
