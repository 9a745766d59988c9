using PanelTui.Documents.Text;

namespace PanelTui.Documents.Comparing;

/// <summary>What is to be said of two texts that differ although they tell the same about the panel.</summary>
internal static class WordingChange
{
    public static ScheduleChange Of(Snapshot before, Snapshot after)
    {
        var comments = !Comments(before).SequenceEqual(Comments(after));
        var words = WithoutBreaks(before) != WithoutBreaks(after);
        var text = (comments, words) switch
        {
            (true, _) => "only comments changed, nothing about the panel",
            (_, true) => "only the spelling, order or layout changed, nothing about the panel",
            _ => "only line ends or the byte order mark changed, nothing about the panel",
        };
        return new(ChangeKind.Wording, "", "", text);
    }

    private static IEnumerable<string> Comments(Snapshot version) =>
        version.Tree!.Comments.Select(comment => version.Source.Slice(comment).Trim()).Order(StringComparer.Ordinal);

    private static string WithoutBreaks(Snapshot version) => LineBreaks.AsLf(version.Source.Text);
}
