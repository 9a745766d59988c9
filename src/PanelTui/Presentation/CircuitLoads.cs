using PanelTui.Engine;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Presentation;

/// <summary>What each circuit connects to each leg.</summary>
internal sealed class CircuitLoads(Assessment assessment)
{
    private readonly ILookup<int, PlacedLoad> _loads = assessment.Connected.Loads.ToLookup(load => load.Circuit.Ordinal);

    public VoltAmperes On(Circuit circuit, Leg leg) =>
        _loads[circuit.Ordinal].Aggregate(VoltAmperes.Zero, (sum, load) => sum + load.Legs.VoltAmperesOn(leg));
}
