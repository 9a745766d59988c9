namespace PanelTui.Engine.Quantities;

/// <summary>A duration in hours [h].</summary>
public readonly record struct Hours(decimal Value)
{
    /// <summary>The exact value with its unit, as on a nameplate.</summary>
    public override string ToString() => Shown.Plainly(Value, "h");
}
