namespace PanelTui.Documents.Merging;

/// <summary>Merges what says nothing about the panel. No comment that a side wrote is lost.</summary>
internal static class CommentMerge
{
    /// <summary>The lines above an entry, or below the last one.</summary>
    public static string OfLines(string ancestor, string ours, string theirs)
    {
        if (ours == theirs || theirs == ancestor) return ours;
        if (ours == ancestor) return theirs;
        var known = Lines.Of(ancestor).Concat(Lines.Of(ours)).Select(line => line.Trim()).ToHashSet(StringComparer.Ordinal);
        return ours + string.Concat(Lines.Of(theirs).Where(line => Lines.IsComment(line) && !known.Contains(line.Trim())));
    }

    /// <summary>Whether lines hold a comment that they did not hold before.</summary>
    public static bool HasNew(string ancestor, string now) => ancestor != now && Of(now).Except(Of(ancestor)).Any();

    private static IEnumerable<string> Of(string text) => Lines.Tree(text) is { } tree
        ? tree.Comments.Select(comment => tree.Source.Text.Substring(comment.Start, comment.Length).Trim())
        : Lines.Of(text).Where(Lines.IsComment).Select(line => line.Trim());

    /// <summary>What stands after a value on its line, its break included.</summary>
    public static string OfEnd(string ancestor, string ours, string theirs)
    {
        if (ours == theirs || theirs == ancestor) return ours;
        if (ours == ancestor) return theirs;
        if (theirs.Trim().Length == 0) return ours;
        return ours.Trim().Length == 0 ? theirs : $"{ours.TrimEnd()} {theirs.TrimStart()}";
    }
}
