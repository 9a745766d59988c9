using PanelTui.CommandLine;
using PanelTui.Documents.Files;
using PanelTui.Documents.Merging;
using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui;

/// <summary>A file that a merge left with conflict markers, and the merge of its versions by what they say.</summary>
/// <param name="Read">The file as it is on disk, its text that of our version.</param>
internal sealed record MarkedFile(LoadedFile Read, ScheduleMerge Merge)
{
    /// <summary>Why nothing may be changed before the conflicts are settled.</summary>
    public const string Unsettled = "The file has conflicts of a merge: M settles them";

    /// <summary>Nothing where there are no markers, or the versions between them cannot be told apart and read.</summary>
    public static MarkedFile? Of(string path, LoadedFile file)
    {
        if (MarkedVersions.Of(file.Source) is not { } versions) return null;
        var merge = ScheduleMerge.Of(versions.Ancestor ?? Ancestor(path, versions), versions.Ours, versions.Theirs);
        return merge.WhyNot is null ? new MarkedFile(file with { Source = versions.Ours }, merge) : null;
    }

    /// <summary>What git kept of the merge's beginning; without it, a schedule without anything, so that each difference is asked for.</summary>
    private static SourceText Ancestor(string path, MarkedVersions versions)
    {
        var kept = Git.Show(":1", path);
        try
        {
            return kept.Succeeded ? SourceText.FromBytes(kept.Out) : versions.Ours.WithText("");
        }
        catch (YamlProblem)
        {
            return versions.Ours.WithText("");
        }
    }
}
