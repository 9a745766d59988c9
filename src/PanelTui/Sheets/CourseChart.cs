using PanelTui.Engine;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;
using PanelTui.Engine.Running.Endurance;
using PanelTui.Presentation;

namespace PanelTui.Sheets;

/// <summary>The state of charge over three days from full, with grid and generator gone: a step for each hour, the reserve dashed.</summary>
internal static class CourseChart
{
    private const double Left = 150;
    private const double Wide = 288; // 4 points an hour
    private const double High = 72;
    private const int TickHours = 12;
    private const double Most = 100;

    /// <summary>Draws the course of each scenario below one another.</summary>
    /// <returns>Where the last one ends; where it began for a schedule without a battery.</returns>
    public static double Draw(Sketch sketch, double y, Assessment assessment)
    {
        foreach (var run in assessment.Scenarios)
        {
            if (EnergyCourse.Of(assessment.Schedule, run.AverageOn, Percent.Whole, 0, charges: false) is { } course)
                y = Draw(sketch, y, run, assessment.Schedule, course);
        }

        return y;
    }

    private static double Draw(Sketch sketch, double y, ScenarioRun run, Schedule schedule, EnergyCourse course)
    {
        var sun = schedule.Source?.Solar is null ? "no sun stated" : "with the stated sun";
        sketch.Text(4, y + 12, $"{run.Name}: {EnergyCourse.UsualHours} hours from full at midnight, {sun}, grid and generator gone", 9.5, bold: true, room: Left + Wide);
        var top = y + 20;
        Frame(sketch, top, course.Reserve);
        Steps(sketch, top, course);
        var without = course.FirstMissed is { } at ? $"loads go without after {Figure.Of(at)}" : "no hour goes without";
        sketch.Text(Left, top + High + 22, $"Average load {Figure.Of(run.Average)}; lowest charge {Figure.Of(course.Lowest)}; {without}.", 8.5, room: Wide);
        return top + High + 34;
    }

    private static void Frame(Sketch sketch, double top, Percent reserve)
    {
        sketch.Box(Left, top, Wide, High, weight: 0.5);
        var kept = top + High - (High * (double)reserve.Value / Most);
        sketch.Line(Left, kept, Left + Wide, kept, 0.8, dashed: true);
        sketch.Text(Left - 8, top + 7, "100 %", 8.5, align: Align.Right);
        sketch.Text(Left - 8, kept + 3, $"reserve {reserve}", 8.5, align: Align.Right);
        for (var hour = 0; hour <= EnergyCourse.UsualHours; hour += TickHours)
        {
            var x = Left + (Wide * hour / EnergyCourse.UsualHours);
            sketch.Line(x, top + High, x, top + High + 3, 0.5);
            sketch.Text(x, top + High + 11, $"{hour} h", 7.5, align: Align.Middle);
        }
    }

    private static void Steps(Sketch sketch, double top, EnergyCourse course)
    {
        var (x, y) = (Left, At(course.From));
        foreach (var hour in course.Hours)
        {
            var (next, end) = (Left + (Wide * (hour.Hour + 1) / EnergyCourse.UsualHours), At(hour.End));
            sketch.Line(x, y, next, end, 1.4);
            (x, y) = (next, end);
        }

        double At(Percent charge) => top + High - (High * (double)charge.Value / Most);
    }
}
