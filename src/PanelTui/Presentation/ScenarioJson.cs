using System.Text.Json;
using PanelTui.Engine;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;
using PanelTui.Engine.Running.Endurance;
using PanelTui.Engine.Running.Starting;

namespace PanelTui.Presentation;

/// <summary>What `run --json` prints: every scenario with its limits, starts and course; numbers plain, of twelve digits.</summary>
internal sealed class ScenarioJson(Utf8JsonWriter json, Assessment assessment, RunRequest asked)
{
    private readonly Schedule _schedule = assessment.Schedule;

    public static string Of(Assessment assessment, IReadOnlyList<ScenarioRun> runs, RunRequest asked) =>
        JsonOutput.Run.Of(json => new ScenarioJson(json, assessment, asked).Write(runs));

    private void Write(IReadOnlyList<ScenarioRun> runs)
    {
        json.WriteStartArray("scenarios");
        foreach (var run in runs) WriteScenario(run);
        json.WriteEndArray();
        WriteNeutral();
    }

    private void WriteScenario(ScenarioRun run)
    {
        json.WriteStartObject();
        json.WriteString("name", run.Name);
        json.WriteFigure("running_w", run.Running.Value);
        json.WriteFigure("neutral_amps", run.Neutral.Value);
        RunJson.WriteBounds(json, run);
        RunJson.WriteCircuits(json, "dead", run.Dead.Select(load => load.Circuit));
        RunJson.WriteCircuits(json, "shed", Shedding.Of(run, _schedule).Shed);
        json.WriteStartArray("starts");
        foreach (var moment in run.Starts.Moments)
        {
            json.WriteStartObject();
            RunJson.WriteFields(json, moment);
            RunJson.WriteRelief(json, StartRelief.Of(moment, run, _schedule));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Write("may_start_at_once", run.Starts.AtOnce);
        WriteTogether(run);
        WriteStages(run);
        OneUnitJson.Write(json, OneUnit.Of(run, _schedule));
        json.WriteFigure("average_w", run.Average.Value);
        Write("hours_to_reserve", run.ToReserve?.Value);
        Write("hours_from_charge", _schedule.Source?.Battery?.HoursToReserve(asked.From, run.Average)?.Value);
        WriteCourse(run);
        json.WriteEndObject();
    }

    /// <summary>All starts in one moment, as automatic equipment closes; null where nothing starts.</summary>
    private void WriteTogether(ScenarioRun run)
    {
        if (run.Starts.Together is not { } together)
        {
            json.WriteNull("all_at_once");
            return;
        }

        json.WriteStartObject("all_at_once");
        RunJson.WriteMoment(json, together);
        json.WriteEndObject();
    }

    private void WriteStages(ScenarioRun run)
    {
        json.WriteStartArray("start_stages");
        foreach (var stage in run.Starts.Stages)
        {
            json.WriteStartObject();
            RunJson.WriteCircuits(json, "ids", stage.Starting.Select(start => start.Circuit));
            RunJson.WriteMoment(json, stage);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private void WriteCourse(ScenarioRun run)
    {
        json.WriteStartArray("course");
        var course = EnergyCourse.Of(_schedule, run.AverageOn, asked.From, asked.StartHour, asked.ChargesIn(_schedule));
        foreach (var hour in course?.Hours ?? [])
        {
            json.WriteStartObject();
            json.WriteNumber("hour", hour.Hour);
            json.WriteNumber("hour_of_day", hour.OfDay);
            foreach (var (name, energy) in Parts(hour.Flow)) json.WriteFigure(name, energy.Value);
            json.WriteFigure("charge_percent", hour.End.Value);
            json.WriteBoolean("charged", hour.Charged);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static (string Name, WattHours Energy)[] Parts(EnergyFlow flow) =>
    [
        ("wanted_wh", flow.Wanted), ("missed_wh", flow.Missed), ("sun_wh", flow.Sun), ("spilled_wh", flow.Spilled),
        ("supplied_wh", flow.Supplied), ("idle_wh", flow.Idle), ("lost_wh", flow.Lost), ("stored_wh", flow.Stored),
    ];

    private void WriteNeutral()
    {
        if (NeutralVerdict.Of(_schedule) is not { } verdict)
        {
            json.WriteNull("neutral");
            return;
        }

        json.WriteStartObject("neutral");
        json.WriteString("bonds", verdict.Bonds.Word);
        if (verdict.IsSeparatelyDerived is { } derived) json.WriteBoolean("separately_derived", derived);
        else json.WriteNull("separately_derived");
        json.WriteString("standing", verdict.Standing.Word);
        json.WriteBoolean("standing_inferred", verdict.IsInferred);
        json.WriteString("sign", verdict.Sign);
        json.WriteEndObject();
    }

    private void Write(string name, decimal? value)
    {
        if (value is { } known) json.WriteFigure(name, known);
        else json.WriteNull(name);
    }
}
