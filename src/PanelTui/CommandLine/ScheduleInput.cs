using PanelTui.Documents;
using PanelTui.Documents.Files;
using PanelTui.Documents.Text;
using PanelTui.Documents.Yaml;
using PanelTui.Presentation;

namespace PanelTui.CommandLine;

/// <summary>A schedule as a verb is given it: a path, or `-` for standard input.</summary>
/// <param name="Problem">Why it could not be read at all, in one sentence; null for a text that was read.</param>
/// <param name="At">Where in the file the problem is; null where it is about the file as a whole.</param>
internal sealed record ScheduleInput(string Name, Snapshot? Snapshot, string? Problem, LinePosition? At = null)
{
    private const string StandardInput = "-";

    /// <summary>The problem as a line for the error stream; null for a text that was read.</summary>
    public string? ProblemLine => (Problem, At) switch
    {
        (null, _) => null,
        (_, { } at) => DisplayText.Clean($"{Name}:{at.Line}:{at.Column}: error: {Problem}"),
        _ => DisplayText.Clean($"paneltui: {Problem}"),
    };

    /// <summary>Never throws on what a user names or writes: what cannot be read at all is a <see cref="Problem"/>.</summary>
    public static ScheduleInput Read(string path, Streams streams)
    {
        var name = path == StandardInput ? "standard input" : path;
        try
        {
            return new ScheduleInput(name, Snapshot.Of(TextOf(path, streams)), null);
        }
        catch (IOException problem) when (path == StandardInput)
        {
            return new ScheduleInput(name, null, $"standard input cannot be read: {problem.Message}");
        }
        catch (FileProblem problem) when (problem.Fault == FileFault.NotFound)
        {
            return new ScheduleInput(name, null, $"there is no file '{path}'");
        }
        catch (FileProblem problem)
        {
            return new ScheduleInput(name, null, problem.Message);
        }
        catch (YamlProblem problem)
        {
            return new ScheduleInput(name, null, problem.Message, problem.Position);
        }
    }

    private static SourceText TextOf(string path, Streams streams)
    {
        if (path != StandardInput) return ScheduleFile.Load(path).Source;
        using var input = streams.In();
        return SourceText.FromBytes(BytesOf(input));
    }

    /// <summary>Reads no further than a file that is too large to be a schedule: the reader then says so.</summary>
    private static byte[] BytesOf(Stream input)
    {
        using var bytes = new MemoryStream();
        var buffer = new byte[64 * 1024];
        while (bytes.Length <= TextLimits.Bytes && input.Read(buffer) is > 0 and var count) bytes.Write(buffer, 0, count);
        return bytes.ToArray();
    }
}
