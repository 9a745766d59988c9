namespace PanelTui.Engine.Quantities;

/// <summary>A line conductor as it is ordered: `6 AWG Cu`.</summary>
public sealed record Conductor(ConductorSize Size, ConductorMetal Metal)
{
    public override string ToString() => $"{Size} {Metal switch
    {
        ConductorMetal.Copper => "Cu",
        ConductorMetal.Aluminum => "Al",
        ConductorMetal.CopperCladAluminum => "CCA",
        _ => throw Unnamed.Of(Metal),
    }}";
}
