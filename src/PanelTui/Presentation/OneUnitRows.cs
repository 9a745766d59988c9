using PanelTui.Engine.Panels;
using PanelTui.Engine.Running;

namespace PanelTui.Presentation;

/// <summary>What happens when one of two units stops, and what one unit alone carries on both legs.</summary>
internal static class OneUnitRows
{
    public static IEnumerable<string> Of(OneUnit one)
    {
        foreach (var dark in one.ByLeg)
        {
            foreach (var line in Wrapped.Of($"Unit {dark.Leg} stops. Dark: {Listed(dark.Dark)}. Standing still at 240 V: {Listed(dark.Between)}.", 78))
                yield return line;
        }

        foreach (var line in Wrapped.Of("Check the units' manual: a stacked pair often stops as a whole (common practice, no source).", 78)) yield return line;
        yield return "The other unit alone on both legs, in phase:";
        foreach (var line in RunningRows.Of(one.Alone, one.Schedule)) yield return $"  {line}";
    }

    private static string Listed(IReadOnlyCollection<Circuit> circuits) => circuits.Count == 0 ? "nothing that runs" : RunningRows.Names(circuits);
}
