namespace PanelTui.Engine.Quantities;

/// <summary>A nominal voltage in volts [V], such as 120 V from line to neutral.</summary>
public readonly record struct Volts(decimal Value)
{
    public static bool operator <(Volts left, Volts right) => left.Value < right.Value;

    public static bool operator >(Volts left, Volts right) => left.Value > right.Value;

    /// <summary>The exact value with its unit, as on a nameplate.</summary>
    public override string ToString() => Shown.Plainly(Value, "V");
}
