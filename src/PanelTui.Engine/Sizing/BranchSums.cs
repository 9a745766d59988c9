using System.Collections.Immutable;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Sizing;

/// <summary>The sums of one circuit's loads from which the load of each pole follows.</summary>
internal sealed class BranchSums(ImmutableArray<PlacedLoad> loads, PanelSystem system)
{
    private readonly LegLoads _all = LegSum.Of(system, loads);

    private readonly LegLoads _more = LegSum.Of(system, loads.Where(BranchLoad.CountsMore)) * BranchLoad.Extra;

    /// <summary>Those without an ampacity on the nameplate.</summary>
    private readonly LegLoads _unplated = LegSum.Of(system, loads.Where(load => PlateOf(load) is null));

    public BranchLoad On(Leg leg)
    {
        var plates = PlatesOn(leg);
        var motor = MotorOn(leg);
        return new BranchLoad(
            _all.AmperesOn(leg),
            new Amperes(_more.AmperesOn(leg).Value * 100 / BranchLoad.Extra.Value),
            (_all + _more).AmperesOn(leg),
            new ConductorLoad(
                (_unplated + _more + motor).AmperesOn(leg) + plates, (_unplated + motor).AmperesOn(leg) + plates));
    }

    private static Amperes? PlateOf(PlacedLoad load) => load.Load.MinimumCircuitAmpacity;

    private Amperes PlatesOn(Leg leg)
    {
        var sum = Amperes.Zero;
        foreach (var load in loads)
        {
            if (PlateOf(load) is { } plate && load.Placement.Legs.Contains(leg))
                sum += new Amperes(Bounded.Product(plate.Value, load.Load.Count));
        }
        return sum;
    }

    private LegLoads MotorOn(Leg leg)
    {
        var largest = LegLoads.None(system);
        foreach (var load in loads)
        {
            if (load.IsMotor && PlateOf(load) is null && load.OneOfThem.AmperesOn(leg) > largest.AmperesOn(leg))
                largest = load.OneOfThem;
        }
        return largest * BranchLoad.Extra;
    }
}
