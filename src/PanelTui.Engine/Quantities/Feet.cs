namespace PanelTui.Engine.Quantities;

/// <summary>A length in feet [ft], one way: conductor tables and voltage-drop formulas of this trade are per foot.</summary>
/// <remarks>A length given in metres is converted when it is read, at 0.3048 m to the foot.</remarks>
public readonly record struct Feet(decimal Value)
{
    /// <summary>The exact value with its unit, as on a nameplate.</summary>
    public override string ToString() => Shown.Plainly(Value, "ft");
}
