using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Sizing;

/// <summary>A conductor of a length, one way, in what it runs in.</summary>
public readonly record struct WireRun(Conductor Conductor, Conduit Conduit, Feet Length)
{
    private const decimal Kilofoot = 1000;

    /// <summary>The ohms of one conductor from end to end.</summary>
    public decimal Ohms(OhmsPerKilofoot impedance) => Bounded.Product(impedance.Value, Length.Value) / Kilofoot;
}
