using System.Globalization;
using PanelTui.Engine.Running;

namespace PanelTui.Presentation;

/// <summary>All scenarios side by side, a line each: how near the nearest limit is, the worst start, the hours.</summary>
internal static class ScenarioTable
{
    public static IEnumerable<string> Of(IReadOnlyList<ScenarioRun> runs)
    {
        if (runs.Count == 0) yield break;
        yield return "";
        yield return Row("ALL SCENARIOS", "running", "limit", "worst start", "hours");
        foreach (var run in runs)
        {
            yield return Row(
                run.Name,
                Figure.Of(run.Running),
                run.Binding is { } nearest ? $"{(nearest.Ok ? "" : "! ")}{Figure.Of(nearest.Share)}" : "-",
                Start(run),
                run.ToReserve is { } hours ? Figure.Of(hours) : "-");
        }
    }

    private static string Start(ScenarioRun run) => run.Starts.Worst switch
    {
        null => "none",
        { Ok: true } => "within",
        { Ok: false } => "BEYOND",
        _ => "not told",
    };

    private static string Row(string name, string running, string limit, string start, string hours) =>
        string.Create(CultureInfo.InvariantCulture, $"{DisplayText.Fit(name, 34)}{running,10}{limit,12}{start,13}{hours,10}");
}
