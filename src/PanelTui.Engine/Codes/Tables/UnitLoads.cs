using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>Loads that the code counts by the piece where no rating is known. The section letters are from memory.</summary>
public static class UnitLoads
{
    public static readonly CodeSection ReceptacleSection = Nec.FromMemory("220.14(I)");

    public static readonly CodeSection SmallApplianceSection = Nec.FromMemory("220.52(A)");

    public static readonly CodeSection LaundrySection = Nec.FromMemory("220.52(B)");

    /// <summary>For each yoke.</summary>
    public static readonly VoltAmperes Receptacle = 180.VA;

    /// <summary>For each circuit.</summary>
    public static readonly VoltAmperes SmallAppliance = 1500.VA;

    /// <summary>For each circuit.</summary>
    public static readonly VoltAmperes Laundry = 1500.VA;
}
