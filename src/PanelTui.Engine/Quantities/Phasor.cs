namespace PanelTui.Engine.Quantities;

/// <summary>An alternating current with its angle: the one place where figures are doubles, for sines and roots.</summary>
public readonly record struct Phasor(double Real, double Imaginary)
{
    public static readonly Phasor Zero;

    private const int Nanoamperes = 9;

    /// <summary>The way back, to the nanoampere: beyond that a double's noise would decide what meets a limit exactly.</summary>
    public Amperes Magnitude => new(
        Math.Round((decimal)Math.Sqrt((Real * Real) + (Imaginary * Imaginary)), Nanoamperes));

    /// <summary>The angle counts counter-clockwise from leg A's voltage to neutral.</summary>
    public static Phasor At(double amperes, int degrees)
    {
        var (sine, cosine) = Math.SinCos(degrees * Math.PI / 180);
        return new Phasor(amperes * cosine, amperes * sine);
    }

    public static Phasor operator +(Phasor left, Phasor right) =>
        new(left.Real + right.Real, left.Imaginary + right.Imaginary);

    public static Phasor operator -(Phasor left, Phasor right) =>
        new(left.Real - right.Real, left.Imaginary - right.Imaginary);
}
