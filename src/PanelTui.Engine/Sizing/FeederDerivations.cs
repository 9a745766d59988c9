using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Derivations;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Sizing;

/// <summary>How the feeder's conductors, its grounding conductor and its voltage drop come about.</summary>
public static class FeederDerivations
{
    /// <summary>The drop is of a note to the section, which a note cannot enforce.</summary>
    private static readonly CodeSection DropNote = Nec.Section("215.2(A)");

    /// <param name="feeder">The sizes.</param>
    /// <param name="schedule">What is stated of it, and so what had to be assumed.</param>
    public static Derivation WhyConductor(this FeederSizing feeder, Schedule schedule) => new(
        FigureNames.Conductor,
        "Smallest conductor of the feeder",
        [
            SizingSteps.Step(
                "To carry at the ends: minimum ampacity", feeder.Load.Required, FeederSizing.ConductorSection.In(feeder.Edition)),
            SizingSteps.Step(
                "To carry on the way: continuous loads at 100 %", feeder.Load.Calculated,
                FeederSizing.ConductorSection.In(feeder.Edition)),
            SizingSteps.Step("Device to be protected by", feeder.Device, FeederSizing.Section.In(feeder.Edition)),
            .. SizingSteps.Of(feeder.Conditions, schedule),
            .. Sized(feeder, "Stated", feeder.Stated),
            .. Sized(feeder, "Smallest", feeder.Copper),
            .. Sized(feeder, "Smallest", feeder.OtherMetal),
            .. None(feeder),
        ]);

    public static Derivation WhyGroundingConductor(this FeederSizing feeder) => new(
        FigureNames.GroundingConductor,
        "Equipment grounding conductor of the feeder",
        feeder.Grounding is not { } grounding
            ? [SizingSteps.Step("No conductor to go by; device", feeder.Device, GroundingConductor.Section.In(feeder.Edition))]
            : [.. SizingSteps.Of(grounding, feeder.Edition)]);

    /// <param name="feeder">The sizes.</param>
    /// <param name="stated">What the schedule says of the feeder.</param>
    public static Derivation WhyVoltageDrop(this FeederSizing feeder, Feeder? stated) => new(
        FigureNames.VoltageDrop,
        "Voltage drop of the feeder, each leg and the worst",
        feeder.VoltageDrop is { } drop ? [.. DropSteps(drop, feeder.Edition)] : [NoDrop(feeder, stated)]);

    private static IEnumerable<DerivationStep> Sized(FeederSizing feeder, string called, ConductorFit? fit) =>
        fit is null ? [] : SizingSteps.Of(called, fit, feeder.Protection);

    private static IEnumerable<DerivationStep> None(FeederSizing feeder) => feeder.Conductor is null
        ? [SizingSteps.Step("No size of the table will do for", feeder.Device, ConductorAmpacity.Section.In(feeder.Edition))]
        : [];

    private static IEnumerable<DerivationStep> DropSteps(VoltageDrop drop, CodeEdition edition) =>
    [
        .. SizingSteps.Of(new WireRun(drop.Conductor, drop.Conduit, drop.Length), drop.Impedance, edition),
        .. drop.Legs.Legs.SelectMany(leg => OnLeg(leg, drop.Legs[leg])),
        SizingSteps.Step($"The worst leg, {drop.WorstLeg}, of line to neutral", drop.Worst, DropNote.In(edition)),
    ];

    private static IEnumerable<DerivationStep> OnLeg(Leg leg, LegDrop drop) =>
    [
        SizingSteps.Step($"{leg}: its own current", drop.Current.Line, Citation.Arithmetic),
        SizingSteps.Step($"{leg}: the neutral's, with its sign", drop.Current.Neutral, Citation.Arithmetic),
        new DerivationStep($"{leg}: volts lost", drop.Lost.Value, "V", Citation.Arithmetic),
    ];

    private static DerivationStep NoDrop(FeederSizing feeder, Feeder? stated) => DerivationStep.Remark(
        stated?.Length is null
            ? "The feeder's length is not stated: no drop is worked out"
            : "The tables do not have the conductor: no drop is worked out",
        DropNote.In(feeder.Edition));
}
