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
}

/// <summary>A way to work out the calculated load. It writes lines; the result sums them.</summary>
/// <remarks>
/// What 215.2, 215.3 and 430.24 add for continuous loads and the largest motor is not in the lines: it goes into the minimum
/// ampacity.
/// </remarks>
public abstract class DemandMethod
{
    public abstract DemandMethodName Name { get; }

    public abstract DemandWorksheet Work(DemandCase demand);
}
