using PanelTui.Documents.Files;
using PanelTui.Documents.Reading.Values;
using PanelTui.Documents.Yaml;
using PanelTui.Presentation;
using PanelTui.Screens;
using PanelTui.Terminal;

namespace PanelTui.CommandLine;

/// <summary>`paneltui FILE`: opens the editor; without a file, on the only schedule in this folder.</summary>
internal static class EditVerb
{
    public static int Run(string? file, bool ascii, Streams streams)
    {
        if ((file ?? ScheduleChoice.Here(streams)) is not { } path) return ExitCode.Unusable;

        if (IsToBeMade(path) && streams.Person is { } person)
        {
            streams.Out.WriteLine(DisplayText.Clean($"{path} does not exist yet."));
            if (NewVerb.Ask(path, person(), streams) is var code and not ExitCode.Clean) return code;
        }

        try
        {
            var (session, snapshot) = Session.Open(path);
            return session is null ? Unreadable(path, snapshot, streams) : Edited(session, ascii);
        }
        catch (FileProblem problem)
        {
            return problem.Fault == FileFault.NotFound ? streams.Misuse(null, $"there is no file '{path}'. {Guess(path)}") : streams.Refuse(problem.Message);
        }
        catch (YamlProblem problem)
        {
            streams.Error.WriteLine(DisplayText.Clean($"{path}:{problem.Position.Line}:{problem.Position.Column}: error: {problem.Message}"));
        }

        return ExitCode.Unusable;
    }

    /// <summary>A name that says it is a schedule, in a folder that is there; anything else was rather mistyped.</summary>
    private static bool IsToBeMade(string path) =>
        Path.GetExtension(path).ToUpperInvariant() is ".YAML" or ".YML"
        && !Path.Exists(path) && Directory.Exists(Path.GetDirectoryName(Path.GetFullPath(path)));

    private static int Edited(Session session, bool ascii)
    {
        using var desk = new Desk(session, StateFolder.OfUser, TimeProvider.System);
        return TerminalHost.Run(desk.Open, desk.End, new TerminalOptions(Ascii: ascii));
    }

    /// <summary>A file that is not there may have been meant as a command.</summary>
    private static string Guess(string path) => DidYouMean.Closest(path, Verbs.All.Select(verb => verb.Name)) is { } verb
        ? $"Did you mean the command '{verb}'?"
        : $"'paneltui new {path}' writes one to start from.";

    private static int Unreadable(string path, Documents.Snapshot snapshot, Streams streams)
    {
        foreach (var line in CheckReport.Lines(path, snapshot)) streams.Error.WriteLine(line.Text);
        return streams.Refuse("the editor opens it once these lines are corrected in a text editor; nothing has been written");
    }
}
