using PanelTui.Documents;
using PanelTui.Engine;
using PanelTui.Engine.Rules;
using PanelTui.Presentation;

namespace PanelTui.CommandLine;

/// <summary>The lines that sum up a check: one a file, one for all files.</summary>
internal static class CheckSummary
{
    private const string NotReadable = "not readable as a schedule";

    /// <summary>What a file without a finding may be taken for, and what it may not.</summary>
    private const string NoFindings = "no findings; what the file does not state was not checked";

    /// <summary>`NAME: 1 error, 0 warnings, 2 notes`.</summary>
    /// <param name="lowest">The least severity that is shown: where it hides something, the line says so.</param>
    public static string OfFile(string name, Snapshot snapshot, Severity lowest)
    {
        if (snapshot.Assessment is null) return DisplayText.Clean($"{name}: {NotReadable}");
        var count = FindingCount.Of(snapshot);
        var accepted = count.Accepted > 0 ? $"; {count.Accepted} accepted" : "";
        var sum = count is { Errors: 0, Warnings: 0, Notes: 0 } ? NoFindings : Counts(count.Errors, count.Warnings, count.Notes);
        return DisplayText.Clean($"{name}: {sum}{accepted}{Hidden(lowest, count)}");
    }

    /// <summary>`3 files: 2 errors, 5 warnings, 1 note; 1 file not readable`.</summary>
    public static string OfAll(IReadOnlyCollection<ScheduleInput> inputs)
    {
        var counts = inputs.Select(CountOf).ToList();
        var unreadable = inputs.Count(input => input.Snapshot?.Assessment is null);
        var sum = Counts(counts.Sum(one => one.Errors), counts.Sum(one => one.Warnings), counts.Sum(one => one.Notes));
        return $"{Counted(inputs.Count, "file")}: {sum}{(unreadable > 0 ? $"; {Counted(unreadable, "file")} not readable" : "")}";
    }

    private static FindingCount CountOf(ScheduleInput input)
    {
        if (input.Snapshot is not { } snapshot) return default;
        return snapshot.Assessment is not null
            ? FindingCount.Of(snapshot)
            : new FindingCount(
                snapshot.Diagnostics.Count(one => one.IsError), 0, snapshot.Diagnostics.Count(one => !one.IsError));
    }

    private static string Counts(int errors, int warnings, int notes) =>
        $"{Counted(errors, "error")}, {Counted(warnings, "warning")}, {Counted(notes, "note")}";

    private static string Hidden(Severity lowest, FindingCount count) => lowest switch
    {
        Severity.Note => "",
        Severity.Warning => count.Notes > 0 ? "; notes not shown" : "",
        Severity.Error => count.Notes + count.Warnings > 0 ? "; warnings and notes not shown" : "",
        _ => throw Unnamed.Of(lowest),
    };

    private static string Counted(int count, string word) => $"{count} {word}{(count == 1 ? "" : "s")}";
}
