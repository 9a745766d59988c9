using PanelTui.Engine.Codes;
using PanelTui.Engine.Derivations;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Demand;

/// <summary>How the calculated load and the minimum ampacity come about.</summary>
public static class DemandDerivations
{
    public static Derivation WhyDemand(this DemandResult demand) => new(
        FigureNames.Demand,
        $"Calculated load, method {demand.Method.Word}",
        [
            .. demand.Worksheet.LeftOut.Select(load => load.Step()),
            .. demand.Worksheet.Given,
            .. demand.Worksheet.Counted.Select(load => load.Step(demand.Edition)),
            .. demand.Steps,
            new DerivationStep("Calculated load", demand.Total.Value, "VA", Citation.Arithmetic),
            .. LegSteps.Of(demand.Legs),
        ]);

    public static Derivation WhyMinimumAmpacity(this DemandResult demand) => new(
        FigureNames.MinimumAmpacity,
        "Minimum ampacity, each leg and the worst",
        [
            .. demand.Legs.System.Legs.SelectMany(leg => AmpacityOn(leg, demand)),
            new DerivationStep("The worst leg", demand.MinimumAmpacity.Value, "A", Citation.Arithmetic),
        ]);

    private static IEnumerable<DerivationStep> AmpacityOn(Leg leg, DemandResult demand)
    {
        yield return new DerivationStep(
            $"{leg}: calculated load", demand.Legs.AmperesOn(leg).Value, "A", Citation.Arithmetic);
        yield return new DerivationStep(
            $"{leg}: {DemandResult.Extra} of what is continuous and no motor",
            (demand.Continuous * DemandResult.Extra).AmperesOn(leg).Value, "A",
            DemandResult.ContinuousSection.In(demand.Edition));
        if (demand.LargestMotorOn(leg) is { } motor)
            yield return LargestMotor(leg, motor, demand.Edition);
        yield return new DerivationStep(
            demand.Legs.System.IsWye ? $"Leg {leg}, phasor sum" : $"Leg {leg}, sum",
            demand.MinimumAmpacityOn(leg).Value, "A", Citation.Arithmetic);
    }

    private static DerivationStep LargestMotor(Leg leg, PlacedLoad motor, CodeEdition edition) => new(
        $"{leg}: {DemandResult.Extra} of the largest motor, {motor.Label}",
        (motor.OneOfThem.AmperesOn(leg) * DemandResult.Extra).Value, "A",
        DemandResult.LargestMotorSection.In(edition), [motor.Circuit.Space]);
}
