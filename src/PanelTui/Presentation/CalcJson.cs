using System.Text.Json;
using PanelTui.Engine;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;

namespace PanelTui.Presentation;

/// <summary>An assessment as one JSON object: numbers plain, of twelve digits, what is not worked out as null.</summary>
internal sealed class CalcJson(Utf8JsonWriter json, Assessment assessment)
{
    public static string Of(Assessment assessment) => JsonOutput.Calc.Of(json => new CalcJson(json, assessment).Write());

    private void Write()
    {
        WritePanel();
        WriteConnected();
        WriteDemand();
        WriteFeeder();
        WriteTransfer();
        json.WriteStartArray("scenarios");
        foreach (var run in assessment.Scenarios) WriteScenario(run);
        json.WriteEndArray();
        FindingJson.WriteArray(json, "findings", assessment.Findings);
        FindingJson.WriteAccepted(json, assessment.Accepted);
        json.WriteStartArray("derivations");
        foreach (var derivation in assessment.Derivations) DerivationJson.Write(json, derivation);
        json.WriteEndArray();
    }

    private void WritePanel()
    {
        var panel = assessment.Schedule.Panel;
        var fill = PanelFill.Of(assessment.Schedule);
        json.WriteStartObject("panel");
        json.WriteString("name", panel.Name);
        json.WriteString("system", panel.System.Name);
        json.WriteNumber("spaces", panel.Spaces);
        json.WriteNumber("poles_used", fill.PolesUsed);
        json.WriteNumber("poles_open", fill.SpacesOpen);
        json.WriteEndObject();
    }

    private void WriteConnected()
    {
        var connected = assessment.Connected;
        json.WriteStartObject("connected");
        json.WriteFigure("va", connected.Total.Value);
        WriteLegs(leg => (connected.VoltAmperesOn(leg), connected.AmperesOn(leg)));
        json.WriteFigure("neutral_amps", connected.Neutral.Value);
        json.WriteFigure("imbalance_percent", connected.Imbalance.Value);
        json.WriteEndObject();
    }

    private void WriteDemand()
    {
        json.WriteStartObject("demand");
        json.WriteString("method", assessment.Schedule.Demand.Method.Word);
        var demand = assessment.Demand;
        Write("va", demand?.Total.Value);
        Write("amps", demand?.Amperes.Value);
        if (demand is null) json.WriteNull("legs");
        else WriteLegs(leg => (demand.Legs.VoltAmperesOn(leg), demand.Legs.AmperesOn(leg)));
        Write("neutral_va", demand?.NeutralVoltAmperes.Value);
        Write("neutral_amps", demand?.Neutral.Value);
        Write("minimum_ampacity", demand?.MinimumAmpacity.Value);
        json.WriteStartArray("steps");
        foreach (var step in demand?.Steps ?? [])
        {
            json.WriteStartObject();
            json.WriteString("label", step.Label);
            json.WriteFigure("va", step.Value);
            json.WriteString("cite", $"{step.Cite}");
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private void WriteFeeder()
    {
        json.WriteStartObject("feeder");
        Write("required_amps", assessment.Feeder?.Required.Value);
        Write("standard_ocpd", assessment.Feeder?.StandardOcpd?.Value);
        Write("conductor", assessment.Feeder?.Conductor?.ToString());
        Write("voltage_drop_percent", assessment.Feeder?.VoltageDrop?.Worst.Value);
        json.WriteEndObject();
    }

    private void WriteTransfer()
    {
        var transfer = assessment.Transfer;
        json.WriteStartObject("transfer");
        Write("required_amps", transfer?.Required.Value);
        Write("standard_rating", transfer?.Standard?.Value);
        Write("stated_rating", (assessment.Schedule.Transfer?.Rating)?.Value);
        Write("ok", transfer?.Ok);
        json.WriteEndObject();
    }

    private void WriteScenario(ScenarioRun run)
    {
        json.WriteStartObject();
        json.WriteString("name", run.Name);
        json.WriteStartObject("legs");
        foreach (var leg in run.Legs.Legs)
        {
            json.WriteStartObject($"{leg}");
            json.WriteFigure("running_w", run.Legs[leg].Running.Value);
            Write("limit_w", run.Legs[leg].Limit?.Value);
            json.WriteFigure("amps", run.Legs[leg].Amperes.Value);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        json.WriteFigure("neutral_amps", run.Neutral.Value);
        RunJson.WriteStart(json, "worst_start", run.Starts.Worst);
        json.WriteFigure("average_w", run.Average.Value);
        Write("hours_to_reserve", run.ToReserve?.Value);
        Write("ok", run.Ok);
        json.WriteEndObject();
    }

    private void WriteLegs(Func<Leg, (VoltAmperes Power, Amperes Current)> figures)
    {
        json.WriteStartObject("legs");
        foreach (var leg in assessment.Schedule.Panel.System.Legs)
        {
            var (power, current) = figures(leg);
            json.WriteStartObject($"{leg}");
            json.WriteFigure("va", power.Value);
            json.WriteFigure("amps", current.Value);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private void Write(string name, decimal? value)
    {
        if (value is { } known) json.WriteFigure(name, known);
        else json.WriteNull(name);
    }

    private void Write(string name, string? value)
    {
        if (value is not null) json.WriteString(name, value);
        else json.WriteNull(name);
    }

    private void Write(string name, bool? value)
    {
        if (value is { } known) json.WriteBoolean(name, known);
        else json.WriteNull(name);
    }
}
