using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;
using PanelTui.Engine.Running.Endurance;

namespace PanelTui.Presentation;

/// <summary>What feeds the charger carries: charging is a load beside what is passed through, on each leg.</summary>
internal static class ChargerRows
{
    public static IEnumerable<string> Of(ScenarioRun run, Schedule schedule)
    {
        if (schedule.Source is not { Charging: { From: not ChargingFrom.Solar } charging } source) yield break;
        var system = schedule.Panel.System;
        var input = ChargingInput.Of(source, charging, run.Legs.Select(leg => leg.Running), system);
        yield return $"Charging draws {Figure.Of(input.Asked)}: {InAmperes(input, system)}.";
        yield return $"While it charges with all of it running, what feeds it carries {string.Join(", ", input.Poles.Select(pole => Sum(pole, input)))}.";
        yield return charging.InputLimit is { } limit
            ? $"The input takes {Figure.Of(input.Poles[0].May!.Value)} ({limit} at 120 V){(input.Poles.Length > 1 ? " on each leg" : "")}: {Outcome(input)}."
            : "No input limit is stated.";
        if (source.Arrangement == SourceArrangement.Split)
            yield return "Charging both units at 240 V has to be allowed in their settings, where less is usual: compare (common practice, no source).";
    }

    private static string InAmperes(ChargingInput input, PanelSystem system)
    {
        var amperes = Figure.Of(new Amperes(input.AskedOfEach.Value / system.LineToNeutral.Value));
        return (input.Poles.Length, system.LineToLine) switch
        {
            (1, _) => $"{amperes} at {system.LineToNeutral}",
            (2, { } volts) when !system.IsWye => $"{amperes} at {volts}, on each leg",
            _ => $"{amperes} on each leg",
        };
    }

    private static string Sum(InputPole pole, ChargingInput input) =>
        $"{(pole.Leg is { } leg ? $"{leg} " : "")}{Figure.Of(pole.Runs)} + {Figure.Of(input.AskedOfEach)} = {Figure.Of(pole.Runs + input.AskedOfEach)}";

    private static string Outcome(ChargingInput input)
    {
        var lacking = input.Poles.Where(pole => pole.Missed > Watts.Zero)
            .Select(pole => $"{(pole.Leg is { } leg ? $"leg {leg}" : "it")} lacks {Figure.Of(pole.Missed)}, which goes without");
        return (input.Charge == input.Asked, input.Charge > Watts.Zero) switch
        {
            (true, _) => "that is enough",
            (_, true) => $"the charger gives way, to {Figure.Of(input.Charge)}",
            _ => string.Join(" and ", lacking.Append("nothing is left to charge with")),
        };
    }
}
