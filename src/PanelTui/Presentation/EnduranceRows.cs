using System.Globalization;
using PanelTui.Engine;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;
using PanelTui.Engine.Running.Endurance;

namespace PanelTui.Presentation;

/// <summary>How long the battery carries a scenario, and whether sun or grid keep up.</summary>
internal static class EnduranceRows
{
    public static IEnumerable<string> Of(ScenarioRun run, Schedule schedule, RunRequest asked)
    {
        if (schedule.Source?.Battery is not { } battery) return ["No battery is stated: nothing tells how long the source lasts."];
        var course = EnergyCourse.Of(schedule, run.AverageOn, asked.From, asked.StartHour, asked.ChargesIn(schedule))!;
        return [.. Hours(run, battery, asked), .. Day(run, schedule, battery), "", Title(schedule, asked), .. CoursePlot.Of(course), .. Sums(course), .. Other(run, schedule, asked), .. ChargerRows.Of(run, schedule)];
    }

    /// <summary>Every hour of the course, in watt-hours.</summary>
    public static IEnumerable<string> Table(EnergyCourse course)
    {
        yield return Row("hour", "day", "wanted", "sun", "supplied", "spilled", "missed", "stored", "charge");
        foreach (var hour in course.Hours)
        {
            var flow = hour.Flow;
            yield return Row(
                Shown.Exactly(hour.Hour + 1), $"{hour.OfDay:00}:00", Wh(flow.Wanted), Wh(flow.Sun), Wh(flow.Supplied), Wh(flow.Spilled),
                Wh(flow.Missed), Wh(flow.Stored), Figure.Of(hour.End));
        }
    }

    private static IEnumerable<string> Hours(ScenarioRun run, Battery battery, RunRequest asked)
    {
        yield return $"Average load {Figure.Of(run.Average)} (running x duty); {Figure.Of(battery.DrawnFor(run.Average))} from the battery with losses and idle draw.";
        yield return $"With nothing that charges, to the reserve of {battery.Reserve}: {From(Percent.Whole)}{(asked.From < Percent.Whole ? $", {From(asked.From)}" : "")}.";

        string From(Percent state)
        {
            var hours = battery.HoursToReserve(state, run.Average) is { } known ? Figure.Of(known) : "over a year";
            return state == Percent.Whole ? $"{hours} from full" : $"{hours} from {state}";
        }
    }

    private static IEnumerable<string> Day(ScenarioRun run, Schedule schedule, Battery battery)
    {
        if (schedule.Source!.Solar is not { } solar) yield break;
        var (brings, takes) = (solar.EnergyOfDay(), battery.DrawnFor(run.Average).Value * SolarDay.Hours);
        var keeps = brings.Value >= takes ? "the sun keeps up on such a day" : "the sun alone does not keep up";
        yield return $"A day takes {Kwh(takes)} from the battery and the sun brings {Kwh(brings.Value)}: {keeps}.";
    }

    private static string Title(Schedule schedule, RunRequest asked)
    {
        var charging = (schedule.Source!.Charging, asked.ChargesIn(schedule)) switch
        {
            (null or { From: ChargingFrom.Solar }, _) => "nothing but the sun charging",
            ({ From: ChargingFrom.Grid or ChargingFrom.Generator } how, true) =>
                $"the {how.From.Word} there to charge from {how.StartsAt} to {how.StopsAt}",
            ({ From: ChargingFrom.Grid }, false) => "in an outage, the grid gone",
            ({ From: ChargingFrom.Generator }, false) => "grid and generator gone",
            ({ } how, _) => throw Unnamed.Of(how.From),
        };
        return $"{EnergyCourse.UsualHours} hours from {asked.From} at {asked.StartHour:00}:00, {charging}:";
    }

    /// <summary>The course that was not asked for, in a sentence.</summary>
    private static IEnumerable<string> Other(ScenarioRun run, Schedule schedule, RunRequest asked)
    {
        if (schedule.Source!.Charging is not { From: not ChargingFrom.Solar } charging) yield break;
        var other = EnergyCourse.Of(schedule, run.AverageOn, asked.From, asked.StartHour, !asked.ChargesIn(schedule))!;
        var when = (asked.ChargesIn(schedule), charging.From) switch
        {
            (true, ChargingFrom.Grid) => "In an outage, with the grid gone",
            (true, ChargingFrom.Generator) => "With the generator gone too",
            (false, ChargingFrom.Grid or ChargingFrom.Generator) =>
                $"With the {charging.From.Word} there to charge from {charging.StartsAt} to {charging.StopsAt}",
            (_, ChargingFrom.Solar) => "",
            _ => throw Unnamed.Of(charging.From),
        };
        yield return $"{when}: {Missed(other)}.";
    }

    private static string Missed(EnergyCourse course)
    {
        var without = course.FirstMissed is { } at ? $", first after {Figure.Of(at)}" : "";
        return $"missed {Kwh(course.Total.Missed.Value)}{without}; lowest {Figure.Of(course.Lowest)}, at the end {Figure.Of(course.Hours[^1].End)}";
    }

    private static IEnumerable<string> Sums(EnergyCourse course)
    {
        var total = course.Total;
        yield return $"In: sun {Kwh(total.Sun.Value)}, supplied {Kwh(total.Supplied.Value)}. Out: used {Kwh(total.Served.Value)}, idle {Kwh(total.Idle.Value)}, lost {Kwh(total.Lost.Value)}, spilled {Kwh(total.Spilled.Value)}.";
        yield return $"All in all: {Missed(course)}.";
    }

    private static string Kwh(decimal wattHours) => Shown.Rounded(wattHours / 1000, 1, "kWh");

    private static string Wh(WattHours energy) => Shown.Rounded(energy.Value, 0);

    private static string Row(params ReadOnlySpan<string> cells) => string.Create(
        CultureInfo.InvariantCulture,
        $"{cells[0],4}{cells[1],7}{cells[2],9}{cells[3],8}{cells[4],10}{cells[5],9}{cells[6],8}{cells[7],8}{cells[8],9}");
}
