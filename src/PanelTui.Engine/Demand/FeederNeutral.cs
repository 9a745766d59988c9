using System.Collections.Immutable;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Demand;

/// <summary>What the neutral of the feeder has to carry: 220.61.</summary>
public sealed record FeederNeutral(
    PanelSystem System, SourceArrangement Arrangement, ImmutableArray<DemandLine> Lines)
{
    /// <summary>Whether legs are in phase: their currents add, and nothing is unbalanced.</summary>
    public bool Adds => Arrangement == SourceArrangement.InPhase;

    /// <summary>No reduction where the neutral carries as much as a leg: on one leg, on two legs of a wye, in phase.</summary>
    public bool IsReducible => !Adds && (System == PanelSystem.SplitPhase || System == PanelSystem.Wye);

    /// <summary>The leg whose loads load the neutral most with the others off, the first of equals.</summary>
    public Leg WorstLeg => System.Legs.MaxBy(AmperesOn);

    /// <summary>The largest load between the neutral and one leg; with legs in phase, the sum of all.</summary>
    public VoltAmperes Unbalanced => Adds ? SumOver(On) : On(WorstLeg);

    /// <summary>With what 220.61(B)(2) takes off above 200 A.</summary>
    public Amperes Amperes => Adds ? Unbalanced / System.LineToNeutral : AmperesOn(WorstLeg);

    public VoltAmperes On(Leg leg) => Sum(line => line.ToNeutral(leg, IsReducible));

    /// <summary>The part of a leg's load that is nonlinear and on a wye, and so is not reduced.</summary>
    public VoltAmperes NonlinearOn(Leg leg) => System.IsWye ? Sum(line => line.Nonlinear.ToNeutral[leg]) : VoltAmperes.Zero;

    private Amperes AmperesOn(Leg leg)
    {
        if (!IsReducible)
            return On(leg) / System.LineToNeutral;
        var nonlinear = VoltAmperes.Min(On(leg), NonlinearOn(leg)) / System.LineToNeutral;
        return nonlinear + NeutralReduction.Reduced((On(leg) / System.LineToNeutral) - nonlinear);
    }

    private VoltAmperes Sum(Func<DemandLine, VoltAmperes> part) =>
        Lines.Aggregate(VoltAmperes.Zero, (sum, line) => sum + part(line));

    private VoltAmperes SumOver(Func<Leg, VoltAmperes> part) =>
        System.Legs.Aggregate(VoltAmperes.Zero, (sum, leg) => sum + part(leg));
}
