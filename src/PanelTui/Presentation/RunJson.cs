using System.Text.Json;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Running;
using PanelTui.Engine.Running.Starting;

namespace PanelTui.Presentation;

/// <summary>A start as JSON, the same in `calc` and in `run`: numbers plain, of twelve digits.</summary>
internal static class RunJson
{
    /// <summary>Null where nothing starts. `limit_va` is the surge, and where none counts the continuous power.</summary>
    public static void WriteStart(Utf8JsonWriter json, string name, StartMoment? moment)
    {
        if (moment is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        WriteFields(json, moment);
        json.WriteEndObject();
    }

    public static void WriteFields(Utf8JsonWriter json, StartMoment moment)
    {
        var start = moment.Starting[0];
        json.WriteString("id", start.Circuit.Id ?? $"{start.Circuit.Space}");
        json.WriteString("basis", start.Words);
        json.WriteFigure("full_load_amps", start.FullLoad.Value);
        json.WriteFigure("start_amps", start.Current.Value);
        json.WriteFigure("start_va", start.Power.Value);
        WriteMoment(json, moment);
    }

    /// <summary>What the legs carry in that moment of what they may, and whether the source carries it.</summary>
    public static void WriteMoment(Utf8JsonWriter json, StartMoment moment)
    {
        json.WriteStartObject("legs");
        foreach (var leg in moment.Asked.System.Legs)
        {
            json.WriteStartObject($"{leg}");
            json.WriteFigure("va", moment.AskedOn(leg).Value);
            if (moment.MayOn is { } may) json.WriteFigure("limit_va", may.Value);
            else json.WriteNull("limit_va");
            json.WriteEndObject();
        }

        json.WriteEndObject();
        if (moment.Ok is { } ok) json.WriteBoolean("ok", ok);
        else json.WriteNull("ok");
    }

    /// <summary>The same start with the rest off, and which others to have off for it beside the rest.</summary>
    public static void WriteRelief(Utf8JsonWriter json, StartRelief relief)
    {
        json.WriteStartObject("alone");
        WriteMoment(json, relief.Alone);
        json.WriteEndObject();
        WriteCircuits(json, "off_first", relief.Off);
    }

    public static void WriteBounds(Utf8JsonWriter json, ScenarioRun run)
    {
        json.WriteStartArray("limits");
        foreach (var bound in run.Bounds) WriteBound(json, bound);
        json.WriteEndArray();
    }

    public static void WriteCircuits(Utf8JsonWriter json, string name, IEnumerable<Circuit> circuits)
    {
        json.WriteStartArray(name);
        foreach (var circuit in circuits.DistinctBy(circuit => circuit.Ordinal)) json.WriteStringValue(circuit.Id ?? $"{circuit.Space}");
        json.WriteEndArray();
    }

    private static void WriteBound(Utf8JsonWriter json, SourceBound bound)
    {
        json.WriteStartObject();
        json.WriteString("limit", bound.Called);
        if (bound.Leg is { } leg) json.WriteString("leg", $"{leg}");
        else json.WriteNull("leg");
        json.WriteFigure("asked", bound.Asked);
        json.WriteFigure("may", bound.May);
        json.WriteString("unit", bound.Unit);
        json.WriteBoolean("ok", bound.Ok);
        json.WriteEndObject();
    }
}
