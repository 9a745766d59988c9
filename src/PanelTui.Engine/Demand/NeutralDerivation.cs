using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Derivations;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Demand;

/// <summary>How the neutral of the calculated load comes about.</summary>
public static class NeutralDerivation
{
    public static Derivation WhyNeutral(this DemandResult demand) => new(
        FigureNames.DemandNeutral, "Neutral of the calculated load", [.. Steps(demand.OnNeutral, demand)]);

    private static IEnumerable<DerivationStep> Steps(FeederNeutral neutral, DemandResult demand) =>
    [
        .. neutral.System.Legs.SelectMany(leg => On(leg, neutral, demand.Edition)),
        new DerivationStep(
            neutral.Adds ? "Sum, the legs being in phase" : "The largest of them",
            neutral.Unbalanced.Value, "VA", NeutralReduction.BasicSection.In(demand.Edition)),
        new DerivationStep(
            $"VA / {neutral.System.LineToNeutral}", (neutral.Unbalanced / neutral.System.LineToNeutral).Value, "A",
            neutral.IsReducible ? Citation.Arithmetic : NeutralReduction.ProhibitedSection.In(demand.Edition)),
        .. Above200(neutral, demand.Edition),
    ];

    /// <summary>The lines that put something on the neutral, and their sum.</summary>
    private static IEnumerable<DerivationStep> On(Leg leg, FeederNeutral neutral, CodeEdition edition)
    {
        foreach (var line in neutral.Lines.Where(line => line.ToNeutral(leg, neutral.IsReducible).Value != 0))
        {
            yield return new DerivationStep(
                Label(leg, line, neutral.IsReducible), line.ToNeutral(leg, neutral.IsReducible).Value, "VA",
                line.IsHousehold ? NeutralReduction.HouseholdSection.In(edition) : line.Cite, line.Spaces);
        }

        yield return new DerivationStep(
            $"Line to neutral on {leg}", neutral.On(leg).Value, "VA", Citation.Arithmetic);
    }

    private static string Label(Leg leg, DemandLine line, bool reduced) =>
        line.IsHousehold && reduced ? $"{leg}: {line.Label}, {NeutralReduction.Household} of it" : $"{leg}: {line.Label}";

    private static IEnumerable<DerivationStep> Above200(FeederNeutral neutral, CodeEdition edition)
    {
        if (!neutral.IsReducible || neutral.Unbalanced / neutral.System.LineToNeutral <= NeutralReduction.Above)
            yield break;
        var kept = neutral.NonlinearOn(neutral.WorstLeg);
        if (kept.Value != 0)
        {
            yield return new DerivationStep(
                "Nonlinear on a wye, which is not reduced", (kept / neutral.System.LineToNeutral).Value, "A",
                NeutralReduction.ProhibitedSection.In(edition));
        }

        yield return new DerivationStep(
            $"What is above {NeutralReduction.Above} at {NeutralReduction.FactorAbove}", neutral.Amperes.Value, "A",
            NeutralReduction.AboveSection.In(edition));
    }
}
