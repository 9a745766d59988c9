using System.Collections.Immutable;
using PanelTui.Engine.Demand.Methods;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Demand;

/// <summary>The methods there are.</summary>
public static class DemandBook
{
    public static readonly ImmutableArray<DemandMethod> All =
    [
        new DwellingStandard(), new DwellingOptional(), new DwellingExisting(),
        new NonDwelling(), new Measured(), new Selected(),
    ];

    public static DemandMethod For(DemandMethodName name) => All.First(method => method.Name == name);

    /// <summary>The calculated load by the method that the schedule names; nothing where a figure is missing for it.</summary>
    public static DemandResult? Work(Schedule schedule, ConnectedLoad connected) =>
        For(schedule.Demand.Method).Work(new DemandCase(schedule, connected.Loads)) is { } worksheet
            ? DemandResult.Of(worksheet, connected)
            : null;
}
