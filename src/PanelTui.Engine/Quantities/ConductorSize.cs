using System.Globalization;

namespace PanelTui.Engine.Quantities;

/// <summary>A conductor's size: 18 AWG to 4/0 AWG, then 250 kcmil and up; the thicker one is the larger.</summary>
/// <remarks><see cref="Gauge"/> is the AWG number, with 1/0 to 4/0 as 0 to -3; kcmil sizes hold <see cref="Kcmil"/> instead.</remarks>
public readonly record struct ConductorSize : IComparable<ConductorSize>
{
    private ConductorSize(int? gauge, int? kcmil) => (Gauge, Kcmil) = (gauge, kcmil);

    public int? Gauge { get; }

    public int? Kcmil { get; }

    /// <summary>Gauges count down as conductors grow; the kcmil sizes follow upon 4/0.</summary>
    private int Rank => Kcmil ?? -Gauge.GetValueOrDefault();

    public static bool operator <(ConductorSize left, ConductorSize right) => left.Rank < right.Rank;

    public static bool operator >(ConductorSize left, ConductorSize right) => left.Rank > right.Rank;

    public static bool operator <=(ConductorSize left, ConductorSize right) => left.Rank <= right.Rank;

    public static bool operator >=(ConductorSize left, ConductorSize right) => left.Rank >= right.Rank;

    public static ConductorSize Awg(int gauge) => new(gauge, null);

    /// <summary>The sizes written with a stroke: 1 for 1/0 AWG, up to 4 for 4/0 AWG.</summary>
    public static ConductorSize Aught(int aughts) => Awg(1 - aughts);

    public static ConductorSize OfKcmil(int kcmil) => new(null, kcmil);

    public int CompareTo(ConductorSize other) => Rank.CompareTo(other.Rank);

    public override string ToString() => this switch
    {
        { Kcmil: { } kcmil } => string.Create(CultureInfo.InvariantCulture, $"{kcmil} kcmil"),
        { Gauge: < 1 and { } gauge } => string.Create(CultureInfo.InvariantCulture, $"{1 - gauge}/0 AWG"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{Gauge} AWG"),
    };
}
