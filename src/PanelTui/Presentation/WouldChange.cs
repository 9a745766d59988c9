using PanelTui.Documents;
using PanelTui.Documents.Comparing;

namespace PanelTui.Presentation;

/// <summary>What one version of a schedule has that another has not, as lines to read before choosing between them.</summary>
internal static class WouldChange
{
    public static IEnumerable<string> Lines(Snapshot before, Snapshot after)
    {
        var changes = ScheduleChanges.Between(before, after);
        return changes.AreNone
            ? ["nothing"]
            :
            [
                .. changes.Facts.Select(fact => $"{fact}"),
                .. changes.Came.Select(finding => $"new finding: {finding.Message}"),
                .. changes.Went.Select(finding => $"no longer found: {finding.Message}"),
            ];
    }
}
