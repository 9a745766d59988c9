using PanelTui.Documents;

namespace PanelTui.Presentation;

/// <summary>What one version of a schedule has that another has not, as lines to read before choosing between them.</summary>
internal static class WouldChange
{
    public static IEnumerable<string> Lines(Snapshot before, Snapshot after)
    {
        var (old, now) = (LinesOf(before), LinesOf(after));
        var (gone, come) = (Count(old, now), Count(now, old));
        return [$"{come} {(come == 1 ? "line" : "lines")} new, {gone} gone"];
    }

    private static int Count(ILookup<string, string> these, ILookup<string, string> others) =>
        these.Sum(line => Math.Max(0, line.Count() - others[line.Key].Count()));

    private static ILookup<string, string> LinesOf(Snapshot snapshot) =>
        Enumerable.Range(1, snapshot.Source.LineCount).Select(line => snapshot.Source.Slice(snapshot.Source.LineSpan(line))).ToLookup(line => line);
}
