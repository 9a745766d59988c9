using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Running.Switching;

/// <summary>What must never happen with this equipment.</summary>
internal static class NeverSteps
{
    public static IEnumerable<string> Of(SwitchingFacts facts)
    {
        yield return "Never join two supplies: the grid and the source, or two sources, must not both reach this panel. It kills line workers and burns equipment.";
        yield return "Never use a cord with a plug at both ends: its blades are live in the hand.";
        yield return facts.Kind switch
        {
            TransferKind.Interlock => "Never defeat, remove or force the interlock.",
            TransferKind.Automatic => "Never work on the panel because it is dark: automatic equipment may close at any moment.",
            TransferKind.Manual => "Never leave the handle between its positions, and never switch it under load where its label forbids that.",
            null when facts.IsAlone =>
                "Never bring a second supply to this panel without transfer equipment between the two.",
            null => "Never connect the source while no transfer equipment is written down for this panel: find out first what keeps the supplies apart.",
            var kind => throw Unnamed.Of(kind),
        };
        if (facts.IsGenerator) yield return "Never run a generator indoors, in a garage or near a window: its exhaust kills. Never fill a hot one.";
    }
}
