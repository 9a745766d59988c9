using System.Collections.Immutable;
using PanelTui.Engine;

namespace PanelTui.Presentation;

/// <summary>The figures that matter on one row, for a window too narrow to have them beside the face; what does not fit is left out.</summary>
internal static class SummaryRow
{
    public static ImmutableArray<TextRun> Of(Assessment now, Assessment? then, int columns)
    {
        var runs = ImmutableArray.CreateBuilder<TextRun>();
        var room = columns;
        foreach (var run in Runs(now, then))
        {
            if (DisplayText.Width(run.Text) > room) break;
            runs.Add(run);
            room -= DisplayText.Width(run.Text);
        }

        return runs.ToImmutable();
    }

    private static IEnumerable<TextRun> Runs(Assessment now, Assessment? then)
    {
        var shown = then ?? now;
        var count = FindingCount.Of(shown.Findings);
        foreach (var leg in now.Schedule.Panel.System.Legs)
            yield return new TextRun($" {leg} {Figure.Of(shown.Connected.AmperesOn(leg))}", FaceText.ToneOf(leg));
        yield return new TextRun($"  off {Change(now, then)}");
        yield return new TextRun(
            $"  {count.Errors} E {count.Warnings} W {count.Notes} N",
            count.Errors > 0 ? Tone.Error : count.Warnings > 0 ? Tone.Warning : Tone.Plain);
        if (shown.Transfer is { Standard: { } needed }) yield return new TextRun($"  transfer {needed}{(shown.Transfer.Ok == false ? " !" : "")}");
        if (shown.Demand is { } demand) yield return new TextRun($"  demand {Figure.Of(demand.Total)}");
    }

    private static string Change(Assessment now, Assessment? then) =>
        Figure.Change(Figure.Of(now.Connected.Imbalance), then is null ? null : Figure.Of(then.Connected.Imbalance));
}
