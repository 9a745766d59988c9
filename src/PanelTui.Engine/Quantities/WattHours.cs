namespace PanelTui.Engine.Quantities;

/// <summary>An energy in watt-hours [Wh]: what a battery holds.</summary>
public readonly record struct WattHours(decimal Value)
{
    public static readonly WattHours Zero;

    public static WattHours operator +(WattHours left, WattHours right) => new(left.Value + right.Value);

    public static WattHours operator -(WattHours left, WattHours right) => new(left.Value - right.Value);

    /// <summary>The exact value with its unit, as on a nameplate.</summary>
    public override string ToString() => Shown.Plainly(Value, "Wh");
}
