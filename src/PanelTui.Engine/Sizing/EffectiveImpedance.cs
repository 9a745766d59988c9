using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Sizing;

/// <summary>What a conductor loses at a power factor: R x pf + X x sin(arccos pf), to neutral.</summary>
/// <remarks>
/// Up to 2 AWG the resistance is that of Table 8, which has a digit more than Table 9: at 60 Hz the two are the same there.
/// </remarks>
public static class EffectiveImpedance
{
    private static readonly ConductorSize LastByTable8 = ConductorSize.Awg(2);

    /// <summary>Nothing for a size that the tables do not have.</summary>
    public static OhmsPerKilofoot? Of(Conductor conductor, Conduit conduit, PowerFactor factor)
    {
        var steel = conduit == Conduit.Steel;
        return Resistance(conductor, steel) is { } resistance
            && ConductorImpedance.Reactance(conductor.Size, steel) is { } reactance
                ? new OhmsPerKilofoot((resistance.Value * factor.Value) + (reactance.Value * factor.Sine))
                : null;
    }

    public static CodeSection ResistanceSection(Conductor conductor) =>
        conductor.Size <= LastByTable8 ? ConductorResistance.Section : ConductorImpedance.Section;

    private static OhmsPerKilofoot? Resistance(Conductor conductor, bool steel) => conductor.Size <= LastByTable8
        ? ConductorResistance.Find(conductor)
        : ConductorImpedance.Resistance(conductor, steel);
}
