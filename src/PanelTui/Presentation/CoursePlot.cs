using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running.Endurance;

namespace PanelTui.Presentation;

/// <summary>The state of charge over the hours, a column an hour, in ASCII.</summary>
/// <remarks>Below it a row that says what happened in each hour, and the hours of the day.</remarks>
internal static class CoursePlot
{
    private const int Gutter = 6;

    /// <param name="course">A column is one of its hours.</param>
    /// <param name="rows">How many rows stand for 100 %, at least 2.</param>
    public static IEnumerable<string> Of(EnergyCourse course, int rows = 10)
    {
        for (var row = rows; row >= 1; row--) yield return Row(course, row, rows);
        yield return $"{"",Gutter}{string.Concat(course.Hours.Select(Mark))}";
        yield return $"{"",Gutter}{Ticks(course)}";
        yield return "! went without   c charging   s sun   - the reserve";
    }

    private static string Row(EnergyCourse course, int row, int rows)
    {
        var (low, high) = (100m * (row - 1) / rows, 100m * row / rows);
        var reserve = course.Reserve.Value > low && course.Reserve.Value <= high;
        var cells = course.Hours.Select(hour => hour.End.Value > (low + high) / 2 ? '#' : reserve ? '-' : ' ');
        return $"{Shown.Rounded(high, 0, "%"),Gutter - 1} {string.Concat(cells)}".TrimEnd();
    }

    private static char Mark(CourseHour hour) =>
        hour.Flow.Missed.Value >= 0.5m ? '!' : hour.Charged ? 'c' : hour.Flow.Sun.Value > 0 ? 's' : '.';

    private static string Ticks(EnergyCourse course) => string.Concat(course.Hours
        .Where((_, index) => index % 6 == 0)
        .Select(hour => $"{$"{hour.OfDay:00}",-6}")).TrimEnd();
}
