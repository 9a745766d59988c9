namespace PanelTui.Engine.Quantities;

/// <summary>An impedance in ohms for each 1000 ft of one conductor [ohm/kft], as the conductor tables print it.</summary>
public readonly record struct OhmsPerKilofoot(decimal Value)
{
    public override string ToString() => Shown.Plainly(Value, "ohm/kft");
}
