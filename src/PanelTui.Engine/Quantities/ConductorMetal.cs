namespace PanelTui.Engine.Quantities;

/// <summary>What a conductor is made of.</summary>
public enum ConductorMetal
{
    Copper,
    Aluminum,
    CopperCladAluminum,
}
