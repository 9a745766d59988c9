using System.Collections.Immutable;

namespace PanelTui.Sheets.Layout;

/// <summary>How wide the columns of a table become, in whatever unit they are measured.</summary>
internal static class ColumnWidths
{
    private const double Least = 0.08;

    /// <summary>As wide as they want to be where there is room; else those that wrap share what the others leave.</summary>
    /// <param name="wanted">Of each column without wrapping.</param>
    /// <param name="wraps">Which columns may be narrower.</param>
    /// <param name="room">For all together, gaps taken off.</param>
    public static ImmutableArray<double> Fit(IReadOnlyList<double> wanted, IReadOnlyList<bool> wraps, double room)
    {
        if (wanted.Sum() <= room) return [.. wanted];
        var left = Math.Max(room * Least, room - wanted.Where((_, at) => !wraps[at]).Sum());
        var open = Enumerable.Range(0, wanted.Count).Where(at => wraps[at]).OrderBy(at => wanted[at]).ToList();
        var widths = wanted.ToArray();
        for (var at = 0; at < open.Count; at++)
        {
            widths[open[at]] = Math.Min(wanted[open[at]], left / (open.Count - at));
            left -= widths[open[at]];
        }

        return [.. widths];
    }
}
