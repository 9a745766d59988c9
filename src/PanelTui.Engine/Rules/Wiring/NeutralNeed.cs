using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Rules.Wiring;

/// <summary>Whether a circuit uses a neutral, as far as its loads tell.</summary>
internal static class NeutralNeed
{
    /// <remarks>Common practice, no source: ranges and dryers have 120 V parts; a one-pole breaker feeds to the neutral.</remarks>
    public static bool Of(Circuit circuit) => !circuit.IsSpare && (circuit.Breaker.Poles == 1 || circuit.Loads.Any(Uses));

    private static bool Uses(Load load) =>
        load.Across == Across.LineToNeutral || load.Kind is LoadKind.Range or LoadKind.Dryer;
}
