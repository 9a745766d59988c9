using System.Text.Json;
using PanelTui.Engine.Running;

namespace PanelTui.Presentation;

/// <summary>What happens when one of two units stops, as the block `one_unit` of `run --json`; null where there are not two.</summary>
internal static class OneUnitJson
{
    public static void Write(Utf8JsonWriter json, OneUnit? one)
    {
        if (one is null)
        {
            json.WriteNull("one_unit");
            return;
        }

        json.WriteStartObject("one_unit");
        json.WriteStartObject("stops");
        foreach (var dark in one.ByLeg)
        {
            json.WriteStartObject($"{dark.Leg}");
            RunJson.WriteCircuits(json, "dark", dark.Dark);
            RunJson.WriteCircuits(json, "between_legs", dark.Between);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        json.WriteStartObject("alone_in_phase");
        json.WriteFigure("running_w", one.Alone.Running.Value);
        json.WriteFigure("neutral_amps", one.Alone.Neutral.Value);
        RunJson.WriteBounds(json, one.Alone);
        RunJson.WriteCircuits(json, "dead", one.Alone.Dead.Select(load => load.Circuit));
        RunJson.WriteCircuits(json, "shared_neutral", one.Shared.SelectMany(shared => shared.Circuits));
        RunJson.WriteCircuits(json, "shed", Shedding.Of(one.Alone, one.Schedule).Shed);
        json.WriteEndObject();
        json.WriteEndObject();
    }
}
