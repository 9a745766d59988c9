using PanelTui.Documents.Merging;
using PanelTui.Documents.Yaml;
using PanelTui.Presentation;

namespace PanelTui.CommandLine;

/// <summary>One merge of three files. Whatever goes wrong, the target never looks merged when it is not.</summary>
internal sealed class MergeRun(string ancestor, string ours, string theirs, string target, string name, int markerSize, bool asJson = false)
{
    /// <summary>As a target: standard output.</summary>
    public const string StandardOutput = "-";

    private const int Unsettled = 1;

    private readonly MarkerLabels _labels = MarkerLabels.Default with { Size = Math.Clamp(markerSize, 7, 100) };

    public int Run(Streams streams)
    {
        try
        {
            var versions = new MergeFiles(Bytes(ancestor), Bytes(ours), Bytes(theirs), _labels);
            if (streams.WritesNothing) return Say(Merge(versions), false, streams);
            if (target == StandardOutput) return ToStandardOutput(versions, streams);
            // Before anything can fail: were this process killed, git would show what is left here. Another target is
            // written at the end.
            if (Path.GetFullPath(target) == Path.GetFullPath(ours)) File.WriteAllBytes(target, versions.AllMarked());
            var merge = Merge(versions);
            if (merge.WhyNot is not null) return LinesOnly(versions, merge, streams);
            Put(merge.IsClean ? merge.Settled().ToBytes() : merge.MarkedBytes(_labels));
            return Say(merge, true, streams);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return streams.Refuse($"'{name}' could not be merged: {error.Message}");
        }
    }

    private int ToStandardOutput(MergeFiles versions, Streams streams)
    {
        var merge = Merge(versions);
        var bytes = merge switch
        {
            { WhyNot: not null } => LineMerged(versions, Directory.GetCurrentDirectory()),
            { IsClean: true } => merge.Settled().ToBytes(),
            _ => merge.MarkedBytes(_labels),
        };
        streams.Out.Write(System.Text.Encoding.UTF8.GetString(bytes));
        return Say(merge, true, streams);
    }

    private int Say(ScheduleMerge merge, bool written, Streams streams)
    {
        if (asJson)
        {
            streams.Out.WriteLine(MergeJson.Of(merge, name, target, written));
            return merge.IsClean ? ExitCode.Clean : Unsettled;
        }

        if (merge.WhyNot is { } why) Say(streams, why);
        foreach (var conflict in merge.Conflicts) Say(streams, $"{conflict}");
        if (!written) streams.WouldWrite(target);
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

    private int LinesOnly(MergeFiles versions, ScheduleMerge merge, Streams streams)
    {
        Put(LineMerged(versions, Path.GetDirectoryName(Path.GetFullPath(target))!));
        if (asJson) return Say(merge, true, streams);
        Say(streams, $"{merge.WhyNot}; merged by lines, settle what is marked");
        return Unsettled;
    }

    private byte[] LineMerged(MergeFiles versions, string folder) => versions.LineMerge(folder, ancestor, theirs) ?? versions.AllMarked();

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
