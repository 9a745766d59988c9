using System.Collections.Immutable;
using PanelTui.Engine.Demand.Methods;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Demand;

/// <summary>The methods there are.</summary>
public static class DemandBook
{
    public static readonly ImmutableArray<DemandMethod> All = [new NonDwelling(), new Selected()];

    /// <summary>Nothing for a method that a schedule can name but that is not worked out yet.</summary>
    public static DemandMethod? For(DemandMethodName name) => All.FirstOrDefault(method => method.Name == name);

    /// <summary>The calculated load by the method that the schedule names.</summary>
    public static DemandResult? Work(Schedule schedule, ConnectedLoad connected) =>
        For(schedule.Demand.Method)?.Work(new DemandCase(schedule, connected.Loads)) is { } worksheet
            ? DemandResult.Of(worksheet, connected)
            : null;
}
