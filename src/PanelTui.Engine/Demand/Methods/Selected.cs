using PanelTui.Engine.Codes;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Demand.Methods;

/// <summary>What the user means to run at one time, at 100 %: the scenario that loads its worst leg most.</summary>
public sealed class Selected : DemandMethod
{
    public static readonly CodeSection Section = Nec.Section((2017, "702.4(B)(1)"), (2023, "702.4(A)(1)"));

    public override DemandMethodName Name => DemandMethodName.Selected;

    public override DemandWorksheet Work(DemandCase demand) =>
        Heaviest(demand) is { } chosen
            ? Sheet(demand, $"Scenario {chosen.Scenario.Name}, which loads its worst leg most", chosen)
            : Sheet(demand, "No scenario is written: every circuit on standby", Everything(demand));

    private static ScenarioLoads? Heaviest(DemandCase demand) => demand.Schedule.Scenarios
        .Select(scenario => ScenarioLoads.Of(scenario, demand.Schedule, demand.Loads))
        .MaxBy(loads => LegSum.Of(demand.System, loads.Loads).WorstAmperes);

    private static ScenarioLoads Everything(DemandCase demand) =>
        ScenarioLoads.Of(new Scenario { Name = "", RunsAll = true }, demand.Schedule, demand.Loads);

    private DemandWorksheet Sheet(DemandCase demand, string label, ScenarioLoads chosen)
    {
        var category = DemandCategory.Of(label, demand.System, chosen.Loads, Section.In(demand.Edition));
        return new DemandWorksheet(Name, chosen.Loads, [DemandLine.Of(category, Percent.Whole)])
        {
            LeftOut = [.. chosen.LeftOut.Select(load => new LeftOutLoad(
                load, $"never with the larger of group {load.Load.Group}", Noncoincident.Section.In(demand.Edition)))],
        };
    }
}
