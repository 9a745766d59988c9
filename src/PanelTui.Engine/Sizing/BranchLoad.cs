using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Sizing;

/// <summary>What the loads of one circuit ask on its worst pole.</summary>
/// <param name="AtFull">Everything at 100 %; of a group the largest.</param>
/// <param name="Continuous">The part that counts 125 %.</param>
/// <param name="Device">What the breaker has to carry: the loads, those that count so at 125 %.</param>
/// <param name="Conductor">What the wire has to carry: the largest motor at 125 %, and nameplate ampacities as they stand.</param>
public readonly record struct BranchLoad(Amperes AtFull, Amperes Continuous, Amperes Device, ConductorLoad Conductor)
{
    public static readonly CodeSection DeviceSection = Nec.Section("210.20(A)");

    public static readonly CodeSection ConductorSection = Nec.Section("210.19(A)");

    public static readonly CodeSection MotorSection = Nec.Section("430.22");

    /// <summary>What a continuous load, and the largest motor, count beyond 100 %.</summary>
    public static readonly Percent Extra = 25.Pct;

    /// <summary>
    /// Continuous as stated; and vehicle chargers, storage water heaters and space heat always: 625.42, 422.13, 424.4(B). A motor
    /// has its own rule, and a nameplate ampacity has it in it.
    /// </summary>
    public static bool CountsMore(PlacedLoad load) => !load.IsMotor && load.Load.MinimumCircuitAmpacity is null
        && (load.Load.Continuous || load.Load.Kind is LoadKind.Ev or LoadKind.WaterHeater or LoadKind.SpaceHeat);

    /// <summary>Of the loads of one circuit.</summary>
    public static BranchLoad Of(ImmutableArray<PlacedLoad> loads, PanelSystem system)
    {
        var worst = default(BranchLoad);
        if (loads.IsEmpty)
            return worst;
        var sums = new BranchSums(loads, system);
        foreach (var leg in system.Legs)
        {
            var here = sums.On(leg);
            if (here.Conductor.Required > worst.Conductor.Required)
                worst = here;
        }
        return worst;
    }
}
