using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Derivations;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Sizing;

/// <summary>Steps that the derivations of feeder and branch circuits share.</summary>
internal static class SizingSteps
{
    public static DerivationStep Step(string label, Amperes current, Citation cite) => new(label, current.Value, "A", cite);

    public static DerivationStep Step(string label, Percent share, Citation cite) => new(label, share.Value, "%", cite);

    /// <summary>Terminals, insulation, heat and grouping, each with what it takes; what is assumed says so.</summary>
    public static IEnumerable<DerivationStep> Of(WiringConditions conditions, Schedule schedule)
    {
        var (panel, feeder) = (schedule.Panel, schedule.Feeder);
        yield return new DerivationStep(
            $"Column of the terminals{Assumed(panel.Terminals is null)}",
            conditions.Terminals.Temperature.Value, "C", TerminalTemperatures.Section.In(conditions.Edition));
        yield return new DerivationStep(
            $"Column of the insulation{Assumed(feeder?.Insulation is null)}", conditions.Insulation.Temperature.Value, "C",
            feeder?.Insulation is null ? Citation.CommonPractice : Citation.Schedule);
        yield return new DerivationStep(
            $"Left by {conditions.Ambient} around it{Assumed(feeder?.Ambient is null)}",
            100 * (conditions.AmbientFactor ?? 0), "%", AmbientCorrection.Section.In(conditions.Edition));
        yield return Step(
            $"Left by the conductors beside it{Assumed(feeder?.CurrentCarrying is null)}", conditions.Grouping, GroupingAdjustment.Section.In(conditions.Edition));
    }

    private static string Assumed(bool assumed) => assumed ? ", assumed" : "";

    /// <summary>What a conductor carries in its place.</summary>
    public static IEnumerable<DerivationStep> Ampacity(string called, ConductorFit fit, CodeEdition edition)
    {
        var table = ConductorAmpacity.Section.In(edition);
        yield return Step($"{called} {fit.Conductor}: at its ends", fit.AtEnds, table);
        yield return Step($"{called} {fit.Conductor}: on the way", fit.OnTheWay, table);
    }

    /// <summary>A conductor in its place, and the largest device that protects it.</summary>
    public static IEnumerable<DerivationStep> Of(string called, ConductorFit fit, ConductorProtection protection)
    {
        foreach (var step in Ampacity(called, fit, protection.Edition))
            yield return step;
        var largest = protection.Largest(fit);
        yield return Step(
            $"{called} {fit.Conductor}: largest device", largest,
            largest < protection.ByAmpacity(fit)
                ? SmallConductorLimits.CiteFor(fit.Conductor, protection.Edition)
                : ConductorProtection.NextSizeUp.In(protection.Edition));
    }

    /// <summary>By the device, then what enlarges or bounds it.</summary>
    public static IEnumerable<DerivationStep> Of(GroundingSize grounding, CodeEdition edition)
    {
        yield return Step(
            grounding.ByDevice is { } byDevice ? $"Grounding conductor: {byDevice} by the device" : "Grounding conductor: the table ends below the device",
            grounding.Device, GroundingConductor.Section.In(edition));
        if (grounding.Enlarged > 1)
        {
            yield return Step(
                "Area of the phases against the smallest that would do", new Percent(100 * grounding.Enlarged),
                GroundingSize.EnlargedSection.In(edition));
        }
        if (grounding.Conductor is { } found && grounding.Section != GroundingConductor.Section)
        {
            yield return Step(
                grounding.Section == GroundingSize.MostSection
                    ? $"Grounding conductor: {found}, no larger than the phases"
                    : $"Grounding conductor: {found}, enlarged as the phases are",
                grounding.Device, grounding.Section.In(edition));
        }
    }

    /// <summary>Resistance, reactance at the power factor, and length.</summary>
    public static IEnumerable<DerivationStep> Of(WireRun run, OhmsPerKilofoot impedance, CodeEdition edition)
    {
        yield return new DerivationStep(
            $"{run.Conductor}: R x pf + X x sin(arccos pf)", impedance.Value, "ohm/kft",
            EffectiveImpedance.ResistanceSection(run.Conductor).In(edition));
        yield return new DerivationStep("Length, one way", run.Length.Value, "ft", Citation.Schedule);
    }
}
