namespace PanelTui.Engine.Quantities;

/// <summary>A temperature in degrees Celsius: insulation, terminals, ambient air.</summary>
public readonly record struct Celsius(decimal Value)
{
    public static bool operator <=(Celsius left, Celsius right) => left.Value <= right.Value;

    public static bool operator >=(Celsius left, Celsius right) => left.Value >= right.Value;

    public override string ToString() => Shown.Plainly(Value, "C");
}
