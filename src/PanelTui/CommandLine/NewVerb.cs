using System.CommandLine;
using PanelTui.Beginning;
using PanelTui.Documents.Files;
using PanelTui.Documents.Text;

namespace PanelTui.CommandLine;

/// <summary>`paneltui new FILE`: a commented schedule to start from.</summary>
internal sealed class NewVerb : Verb
{
    public override string Name => "new";

    public override string Summary => "write a commented schedule to start from";

    protected override bool Writes => true;

    public override string Page => """
        Write a commented schedule to start from. On a terminal a few questions make it:
        the supply, the spaces, the source, what switches, and what is to be fed from a
        list of usual loads. Elsewhere, and with --template, it is a small example to
        change.
        An existing file is never overwritten.

        Usage:
          paneltui new [--template] [--quiet | --dry-run] FILE

        Examples:
          paneltui new shed.panel.yaml      then: paneltui shed.panel.yaml
          paneltui new -                    the example, on standard output

        Opening a file that does not exist yet asks the same questions.
        Exit codes: 0 written, 2 not written.
        """;

    protected override void Describe(Command command, Streams streams)
    {
        var file = new Argument<string>("FILE") { Description = "the file to write, by convention NAME.panel.yaml; - for standard output" };
        var template = new Option<bool>("--template") { Description = "write the small example, ask nothing" };
        var quiet = QuietOption("leave out what was written");
        command.Add(file);
        command.Add(template);
        command.Add(quiet);
        command.SetAction(parsed =>
        {
            var (path, isQuiet) = (parsed.GetRequiredValue(file), parsed.GetValue(quiet));
            if (path == "-" && (isQuiet || streams.WritesNothing))
                return Misuse(streams, "'new -' writes no file, so '--quiet' and '--dry-run' do not go with it");
            if (isQuiet && streams.WritesNothing) return Misuse(streams, "'--dry-run' tells what would be written, so '--quiet' does not go with it");
            return Write(path, parsed.GetValue(template), isQuiet, streams);
        });
    }

    /// <summary>Asks, then writes the file; nothing is written where the person gives up.</summary>
    public static int Ask(string path, TextReader person, Streams streams)
    {
        if (File.Exists(path)) return Save(path, "", streams);
        if (InterviewLines.Ask(person, streams.Out) is { } answers)
        {
            if (BeginningText.LeftOut(answers) is [_, ..] left) streams.Out.WriteLine($"No place was found for: {string.Join(", ", left)}");
            return Save(path, BeginningText.Of(answers), streams);
        }

        streams.Out.WriteLine();
        return streams.Refuse("given up; nothing has been written");
    }

    private static int Write(string path, bool template, bool isQuiet, Streams streams)
    {
        if (path == "-")
        {
            streams.Out.Write(Starter.Text);
            return ExitCode.Clean;
        }

        var code = streams.Person is { } person && !template ? Ask(path, person(), streams) : Save(path, Starter.Text, streams);
        if (code == ExitCode.Clean && !streams.WritesNothing && !isQuiet) streams.Out.WriteLine(Presentation.DisplayText.Clean($"Wrote {path}. Open it: paneltui {path}"));
        return code;
    }

    private static int Save(string path, string text, Streams streams)
    {
        if (streams.WritesNothing) return Path.Exists(path) ? streams.Refuse($"'{path}' exists already and is not overwritten") : streams.WouldWrite(path);
        try
        {
            ScheduleFile.Save(path, SourceText.FromString(text), DiskState.Missing);
            return ExitCode.Clean;
        }
        catch (FileProblem problem)
        {
            return streams.Refuse(problem.Message);
        }
    }
}
