namespace PanelTui.Engine.Quantities;

/// <summary>A duration in seconds [s]: how long a source carries its surge.</summary>
public readonly record struct Seconds(decimal Value)
{
    public static bool operator <(Seconds left, Seconds right) => left.Value < right.Value;

    public static bool operator >(Seconds left, Seconds right) => left.Value > right.Value;

    /// <summary>The exact value with its unit, as on a nameplate.</summary>
    public override string ToString() => Shown.Plainly(Value, "s");
}
