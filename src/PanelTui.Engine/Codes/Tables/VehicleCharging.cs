using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Codes.Tables;

/// <summary>Equipment that charges vehicles: its nameplate, since 2023 no less than 7200 VA each.</summary>
public static class VehicleCharging
{
    /// <summary>Before 2023 an outlet for a specific appliance, whose letter is from memory; the floor was seen.</summary>
    public static CodeSection SectionIn(CodeEdition edition) => HasFloor(edition) ? Since2023 : Before;

    private static readonly CodeSection Before = Nec.FromMemory("220.14(A)");

    private static readonly CodeSection Since2023 = Nec.Section("220.57");

    public static readonly VoltAmperes Floor = 7_200.VA;

    public static VoltAmperes Each(VoltAmperes nameplate, CodeEdition edition) =>
        HasFloor(edition) ? VoltAmperes.Max(nameplate, Floor) : nameplate;

    private static bool HasFloor(CodeEdition edition) => edition switch
    {
        CodeEdition.Nec2017 or CodeEdition.Nec2020 => false,
        CodeEdition.Nec2023 => true,
        _ => throw Unnamed.Of(edition),
    };
}
