using PanelTui.Documents.Merging;
using PanelTui.Documents.Yaml;
using PanelTui.Presentation;

namespace PanelTui.CommandLine;

/// <summary>One merge of three files. Whatever goes wrong, the target never looks merged when it is not.</summary>
internal sealed class MergeRun(string ancestor, string ours, string theirs, string target, string name, int markerSize)
{
    private const int Unsettled = 1;

    private readonly MarkerLabels _labels = MarkerLabels.Default with { Size = Math.Clamp(markerSize, 7, 100) };

    public int Run(Streams streams)
    {
        try
        {
            var versions = new MergeFiles(Bytes(ancestor), Bytes(ours), Bytes(theirs), _labels);
            if (streams.WritesNothing) return Say(Merge(versions), streams);
            // Before anything can fail: were this process killed, git would show what is left here. Another target is
            // written at the end.
            if (Path.GetFullPath(target) == Path.GetFullPath(ours)) File.WriteAllBytes(target, versions.AllMarked());
            var merge = Merge(versions);
            if (merge.WhyNot is { } why) return LinesOnly(versions, why, streams);
            Put(merge.IsClean ? merge.Settled().ToBytes() : merge.MarkedBytes(_labels));
            return Say(merge, streams);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            Say(streams, $"could not be merged: {error.Message}");
            return ExitCode.Unusable;
        }
    }

    private int Say(ScheduleMerge merge, Streams streams)
    {
        if (merge.WhyNot is { } why) Say(streams, why);
        foreach (var conflict in merge.Conflicts) Say(streams, $"{conflict}");
        return merge.IsClean ? ExitCode.Clean : Unsettled;
    }

    private static byte[] Bytes(string path) => File.ReadAllBytes(path);

    private static ScheduleMerge Merge(MergeFiles versions)
    {
        try
        {
            return versions.Merge();
        }
#pragma warning disable CA1031 // A fault of this program must leave markers, not our version with theirs lost.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            return ScheduleMerge.Impossible(fault is YamlProblem ? $"a version cannot be read: {fault.Message}" : $"a fault of this program: {fault.Message}");
        }
    }

    private int LinesOnly(MergeFiles versions, string why, Streams streams)
    {
        Put(versions.LineMerge(Path.GetDirectoryName(Path.GetFullPath(target))!, ancestor, theirs) ?? versions.AllMarked());
        Say(streams, $"{why}; merged by lines, settle what is marked");
        return Unsettled;
    }

    // Whole or not at all: beside the target, then in its place.
    private void Put(byte[] bytes)
    {
        var beside = $"{target}.{Environment.ProcessId}.tmp";
        try
        {
            File.WriteAllBytes(beside, bytes);
            var like = File.Exists(target) ? target : ours;
            if (!OperatingSystem.IsWindows()) File.SetUnixFileMode(beside, File.GetUnixFileMode(like));
            File.Move(beside, target, overwrite: true);
        }
        finally
        {
            File.Delete(beside);
        }
    }

    private void Say(Streams streams, string sentence) => streams.Error.WriteLine(DisplayText.Clean($"{name}: {sentence}"));
}
