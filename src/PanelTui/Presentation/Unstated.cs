using System.Collections.Immutable;
using PanelTui.Engine.Panels;

namespace PanelTui.Presentation;

/// <summary>What a schedule does not say of the way from the source to the bus: no finding about it is no approval of it.</summary>
internal static class Unstated
{
    public static ImmutableArray<string> Of(Schedule schedule) =>
    [
        .. new (string Called, bool IsStated)[]
        {
            ("bus", schedule.Panel.Bus is not null),
            ("feeder", schedule.Feeder is not null),
            ("transfer rating", schedule.Transfer?.Rating is not null),
            ("source limit", (schedule.Source?.Continuous ?? schedule.Source?.ContinuousPerLeg) is not null),
            ("wires", schedule.Circuits.Any(circuit => circuit.Wire is not null)),
        }.Where(one => !one.IsStated).Select(one => one.Called),
    ];
}
