using PanelTui.Documents.Merging;
using PanelTui.Presentation;

namespace PanelTui.CommandLine;

/// <summary>What came of a merge, as JSON.</summary>
internal static class MergeJson
{
    /// <param name="name">What messages call the file.</param>
    /// <param name="target">The file that the result belongs in.</param>
    /// <param name="written">False in a dry run.</param>
    public static string Of(ScheduleMerge merge, string name, string target, bool written) => JsonOutput.Merge.Of(json =>
    {
        json.WriteString("file", name);
        json.WriteBoolean("merged", merge.IsClean);
        json.WriteString("target", target);
        json.WriteBoolean("written", written);
        json.WriteString("by_lines", merge.WhyNot);
        json.WriteStartArray("conflicts");
        foreach (var conflict in merge.Conflicts)
        {
            json.WriteStartObject();
            json.WriteString("where", conflict.Where);
            json.WriteString("what", conflict.What);
            json.WriteString("base", conflict.Ancestor);
            json.WriteString("ours", conflict.Ours);
            json.WriteString("theirs", conflict.Theirs);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    });
}
