namespace PanelTui.Engine.Quantities;

/// <summary>A power factor: real power over apparent power, above 0 and at most 1.</summary>
/// <remarks>The default value of the struct reads as <see cref="Unity"/>, so that no load divides by zero.</remarks>
public readonly record struct PowerFactor
{
    private readonly decimal _below;

    public static readonly PowerFactor Unity;

    public PowerFactor(decimal value)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(value);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(value, 1);
        _below = 1 - value;
    }

    public decimal Value => 1 - _below;

    /// <summary>The reactive share: the sine of the angle that this is the cosine of, to the ninth decimal.</summary>
    public decimal Sine => Math.Round((decimal)Math.Sqrt((double)(1 - (Value * Value))), 9);

    public override string ToString() => Shown.Plainly(Value);
}
