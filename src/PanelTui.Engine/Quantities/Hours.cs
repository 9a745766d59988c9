namespace PanelTui.Engine.Quantities;

/// <summary>A duration in hours [h].</summary>
public readonly record struct Hours(decimal Value) : IComparable<Hours>
{
    public static readonly Hours Zero;

    public static Hours operator +(Hours left, Hours right) => new(left.Value + right.Value);

    public static Hours operator -(Hours left, Hours right) => new(left.Value - right.Value);

    public static Hours operator *(Hours left, decimal times) => new(left.Value * times);

    public static Hours operator *(Hours left, Percent share) => new(left.Value * share.Value / 100);

    public static bool operator <(Hours left, Hours right) => left.Value < right.Value;

    public static bool operator >(Hours left, Hours right) => left.Value > right.Value;

    public static bool operator <=(Hours left, Hours right) => left.Value <= right.Value;

    public static bool operator >=(Hours left, Hours right) => left.Value >= right.Value;

    public static Hours Max(Hours left, Hours right) => left >= right ? left : right;

    public int CompareTo(Hours other) => Value.CompareTo(other.Value);

    /// <summary>The exact value with its unit, as on a nameplate.</summary>
    public override string ToString() => Shown.Plainly(Value, "h");
}
