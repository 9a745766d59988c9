using System.Text.RegularExpressions;
using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;
using YamlDotNet.Core;
using YamlDotNet.Core.Tokens;

namespace PanelTui.Documents.Tests.Writing.Campaign;

/// <summary>
/// What must hold of every edit, checked from outside. Each law returns what it found broken, or null.
/// </summary>
internal static partial class EditLaws
{
    public static string? Broken(RandomEdit edit, string before, string after, TextChange change) =>
        SaysWhatIsIntended(edit, before, after)
        ?? UndoRestores(before, after, change)
        ?? CommentsStay(edit, before, after)
        ?? LinesStay(edit, before, after)
        ?? FinalBreakStays(edit, before, after);

    private static string? SaysWhatIsIntended(RandomEdit edit, string before, string after)
    {
        var intended = SaidReader.Read(before).Copy();
        edit.Intend(intended);
        var said = SaidReader.Read(after).ToString();
        return said == intended.ToString() ? null : $"says {said} and should say {intended}";
    }

    private static string? UndoRestores(string before, string after, TextChange change) =>
        change.Inverse(before).ApplyTo(after) == before ? null : "undo does not restore the text";

    private static string? CommentsStay(RandomEdit edit, string before, string after)
    {
        if (CommentsOf(before) is not { } old || CommentsOf(after) is not { } now) return null;
        if (!edit.IsRemoval) return old.SequenceEqual(now) ? null : $"comments {string.Join('|', old)} became {string.Join('|', now)}";
        return now.All(old.Remove) ? null : "a removal made a comment";
    }

    private static string? LinesStay(RandomEdit edit, string before, string after)
    {
        var (old, now) = (LinesOf(before), LinesOf(after));
        if (edit.IsSet && old.Length == now.Length && edit.Target.Style is not (YamlStyle.Literal or YamlStyle.Folded))
            return old.Zip(now).Count(pair => pair.First != pair.Second) <= 1 ? null : "a one-line edit changed several lines";
        if (edit.IsRemoval) return Missing(now, old) <= 1 ? null : "a removal changed several lines";
        if (edit.IsSet) return null;
        return Missing(old, now) <= 1 ? null : "an insertion changed several lines";
    }

    // It may come where lines of text end the file, whose last break is part of what they say.
    private static string? FinalBreakStays(RandomEdit edit, string before, string after)
    {
        if (edit.IsRemoval || EndsInBreak(before) == EndsInBreak(after)) return null;
        var last = YamlTree.Parse(SourceText.FromString(after)).Root!.DescendantsAndSelf().Last();
        return EndsInBreak(after) && last.Style is YamlStyle.Literal or YamlStyle.Folded ? null : "the final line break came or went";
    }

    private static bool EndsInBreak(string text) => text.Length > 0 && text[^1] is '\n' or '\r';

    // How many of the old lines are not found, in order, among the new ones: by the longest common subsequence.
    private static int Missing(string[] old, string[] now)
    {
        var row = new int[now.Length + 1];
        foreach (var line in old)
        {
            var next = new int[row.Length];
            for (var at = 1; at < row.Length; at++)
                next[at] = line == now[at - 1] ? row[at - 1] + 1 : Math.Max(row[at], next[at - 1]);
            row = next;
        }

        return old.Length - row[^1];
    }

    private static string[] LinesOf(string text) => [.. LineBreak().Split(text).Where(line => line.Length > 0)];

    private static List<string>? CommentsOf(string text)
    {
        try
        {
            var scanner = new Scanner(new StringReader(text), skipComments: false);
            var comments = new List<string>();
            while (scanner.MoveNext())
            {
                if (scanner.Current is Comment comment) comments.Add(comment.Value.Trim());
            }

            comments.Sort(StringComparer.Ordinal);
            return comments;
        }
        catch (Exception error) when (error is YamlException or InvalidOperationException)
        {
            return null;
        }
    }

    [GeneratedRegex("\r\n|\r|\n")]
    private static partial Regex LineBreak();
}
