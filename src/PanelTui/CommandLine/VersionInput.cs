using PanelTui.Documents;
using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;

namespace PanelTui.CommandLine;

/// <summary>The versions that `diff` is given: files, or revisions of a file in git.</summary>
internal static class VersionInput
{
    private const string NoFile = "/dev/null";

    /// <summary>`FILE`, `OLD NEW`, `REVISION FILE` or `REVISION REVISION FILE`.</summary>
    public static (ScheduleInput Old, ScheduleInput New) Of(string[] named, Streams streams) => named switch
    {
        [var file] => (AtRevision("HEAD", file), Read(file, streams)),
        [var old, var now] when !Exists(old) && Exists(now) => (AtRevision(old, now), Read(now, streams)),
        [var old, var now] => (Read(old, streams), Read(now, streams)),
        [var old, var now, var file, ..] => (AtRevision(old, file), AtRevision(now, file)),
        _ => throw new ArgumentException("no file is named", nameof(named)),
    };

    private static bool Exists(string path) => path is "-" or NoFile || File.Exists(path) || Directory.Exists(path);

    private static ScheduleInput Read(string path, Streams streams) =>
        path == NoFile ? new ScheduleInput(path, Snapshot.Of(SourceText.FromString("")), null) : ScheduleInput.Read(path, streams);

    private static ScheduleInput AtRevision(string revision, string file)
    {
        var name = $"{revision}:{file}";
        var shown = Git.Show(revision, file);
        if (!shown.Succeeded) return new ScheduleInput(name, null, $"'{revision}' is no file here, and git does not know it for '{file}': {shown.Error}");
        try
        {
            return new ScheduleInput(name, Snapshot.Of(SourceText.FromBytes(shown.Out)), null);
        }
        catch (YamlProblem problem)
        {
            return new ScheduleInput(name, null, problem.Message, problem.Position);
        }
    }
}
