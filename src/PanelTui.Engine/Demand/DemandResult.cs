using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Derivations;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Demand;

/// <summary>The calculated load of a panel, and the least current that its feeder and its devices have to carry.</summary>
public sealed record DemandResult(
    DemandWorksheet Worksheet, LegLoads Legs, LegLoads Continuous, SourceArrangement Arrangement, CodeEdition Edition)
{
    public static readonly CodeSection ContinuousSection = Nec.Section("215.2, 215.3");

    public static readonly CodeSection LargestMotorSection = Nec.Section("430.24");

    public static readonly CodeSection NeutralSection = NeutralReduction.BasicSection;

    /// <summary>What a continuous load, and the largest motor, count beyond 100 %.</summary>
    public static readonly Percent Extra = 25.Pct;

    public DemandMethodName Method => Worksheet.Method;

    public VoltAmperes Total => Legs.Total;

    /// <summary>The calculated current of the leg that carries most.</summary>
    public Amperes Amperes => Legs.WorstAmperes;

    public FeederNeutral OnNeutral => new(Legs.System, Arrangement, Worksheet.NeutralLines);

    /// <summary>The largest load between the neutral and one leg, before what is taken off above 200 A.</summary>
    public VoltAmperes NeutralVoltAmperes => OnNeutral.Unbalanced;

    public Amperes Neutral => OnNeutral.Amperes;

    /// <summary>The worst leg's.</summary>
    public Amperes MinimumAmpacity => Legs.System.Legs.Max(MinimumAmpacityOn);

    /// <summary>The lines, each with what it counts for: their values add up to the total.</summary>
    public IEnumerable<DerivationStep> Steps => Worksheet.Lines.Select(line => line.Step());

    public static DemandResult Of(DemandWorksheet worksheet, ConnectedLoad connected)
    {
        var system = connected.Legs.System;
        var legs = LegSum.Of(system, worksheet.Lines.Select(line => line.Demand));
        var continuous = LegSum.Of(system, worksheet.Lines.Select(line => line.Continuous));
        return new DemandResult(worksheet, legs, continuous, connected.Arrangement, connected.Edition);
    }

    /// <summary>The load with 125 % of its continuous part and 25 % of the largest motor current on this leg.</summary>
    public Amperes MinimumAmpacityOn(Leg leg) => (WithContinuous + (MotorOn(leg) * Extra)).AmperesOn(leg);

    /// <summary>The one motor with the most current on a leg, the first of equals.</summary>
    /// <remarks>Nothing where no motor is on it, and in a calculation that holds its motors already.</remarks>
    public PlacedLoad? LargestMotorOn(Leg leg) => Worksheet.AddsLargestMotor
        ? Worksheet.Counted
            .Where(load => load.IsMotor && load.Placement.Legs.Contains(leg))
            .MaxBy(load => load.OneOfThem.AmperesOn(leg))
        : null;

    internal LegLoads WithContinuous => Legs + (Continuous * Extra);

    private LegLoads MotorOn(Leg leg) => LargestMotorOn(leg)?.OneOfThem ?? LegLoads.None(Legs.System);
}
