using System.Text;
using PanelTui.Documents.Merging;
using PanelTui.Documents.Text;

namespace PanelTui.CommandLine;

/// <summary>Three versions of a file as bytes, which need not be text.</summary>
internal sealed class MergeFiles(byte[] ancestor, byte[] ours, byte[] theirs, MarkerLabels labels)
{
    public ScheduleMerge Merge() =>
        ScheduleMerge.Of(SourceText.FromBytes(ancestor), SourceText.FromBytes(ours), SourceText.FromBytes(theirs));

    /// <summary>The whole file in question: our lines and theirs between markers.</summary>
    public byte[] AllMarked() =>
    [
        .. Marker('<', labels.Ours), .. Whole(ours), .. Marker('=', ""), .. Whole(theirs), .. Marker('>', labels.Theirs),
    ];

    /// <summary>Git's merge of the lines; null where it finds nothing to ask, or cannot be run.</summary>
    /// <remarks>What only lines agree on has not been understood, so it is not to look settled.</remarks>
    public byte[]? LineMerge(string folder, string ancestorFile, string theirFile)
    {
        var mine = Path.GetTempFileName();
        try
        {
            File.WriteAllBytes(mine, ours);
            var merged = Git.Run(
                folder, "merge-file", "-p", $"--marker-size={labels.Size}", "-L", labels.Ours, "-L", labels.Ancestor, "-L", labels.Theirs,
                mine, Path.GetFullPath(ancestorFile), Path.GetFullPath(theirFile));
            return merged.Code is > 0 and < 127 ? merged.Out : null;
        }
        finally
        {
            File.Delete(mine);
        }
    }

    private byte[] Marker(char sign, string label) => Encoding.UTF8.GetBytes($"{new string(sign, labels.Size)} {label}".TrimEnd() + "\n");

    private static byte[] Whole(byte[] bytes) => bytes.Length == 0 || bytes[^1] == '\n' ? bytes : [.. bytes, (byte)'\n'];
}
