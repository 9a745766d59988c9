using System.Globalization;

namespace PanelTui.Engine.Panels;

/// <summary>What a conductor is made of.</summary>
public enum ConductorMetal
{
    Copper,
    Aluminum,
    CopperCladAluminum,
}

/// <summary>A conductor's size: 18 AWG to 4/0 AWG, then 250 kcmil and up.</summary>
/// <remarks><see cref="Gauge"/> is the AWG number, with 1/0 to 4/0 as 0 to -3; kcmil sizes hold <see cref="Kcmil"/> instead.</remarks>
public readonly record struct ConductorSize
{
    private ConductorSize(int? gauge, int? kcmil) => (Gauge, Kcmil) = (gauge, kcmil);

    public int? Gauge { get; }

    public int? Kcmil { get; }

    public static ConductorSize Awg(int gauge) => new(gauge, null);

    public static ConductorSize OfKcmil(int kcmil) => new(null, kcmil);

    public override string ToString() => this switch
    {
        { Kcmil: { } kcmil } => string.Create(CultureInfo.InvariantCulture, $"{kcmil} kcmil"),
        { Gauge: < 1 and { } gauge } => string.Create(CultureInfo.InvariantCulture, $"{1 - gauge}/0 AWG"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{Gauge} AWG"),
    };
}

/// <summary>A line conductor as it is ordered: `6 AWG Cu`.</summary>
public sealed record Conductor(ConductorSize Size, ConductorMetal Metal)
{
    public override string ToString() => $"{Size} {Metal switch
    {
        ConductorMetal.Copper => "Cu",
        ConductorMetal.Aluminum => "Al",
        _ => "CCA",
    }}";
}
