using System.Collections.Immutable;
using PanelTui.Engine.Codes;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Demand;

/// <summary>What a method works on: the facts, and every load in its place.</summary>
public sealed record DemandCase(Schedule Schedule, ImmutableArray<PlacedLoad> Loads)
{
    public PanelSystem System => Schedule.Panel.System;

    public CodeEdition Edition => Schedule.Code.Edition;

    public DemandBasis Basis => Schedule.Demand;
}

/// <summary>A way to work out the calculated load. It writes lines; the result sums them.</summary>
/// <remarks>
/// What 215.2, 215.3 and 430.24 add for continuous loads and the largest motor is not in the lines: it goes into the minimum
/// ampacity.
/// </remarks>
public abstract class DemandMethod
{
    public abstract DemandMethodName Name { get; }

    /// <summary>Nothing where a figure is missing without which there is no answer.</summary>
    public abstract DemandWorksheet? Work(DemandCase demand);

    /// <summary>What the schedule does not say but the method asks for; nothing where it says all.</summary>
    public virtual LackingFigure? Lacks(DemandBasis basis) => null;

    private protected static LackingFigure? FloorArea(DemandBasis basis) => basis.FloorArea is not null
        ? null
        : new LackingFigure(
            "demand.floor_area",
            "general lighting counts as connected",
            "Give the floor area that this panel serves: dwellings count their general lighting by it.");
}

/// <summary>A key that a method asks for, what it does without, and what to write.</summary>
public sealed record LackingFigure(string Key, string Otherwise, string Mend);
