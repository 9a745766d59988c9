using System.CommandLine;
using PanelTui.Documents.Files;
using PanelTui.Documents.Text;

namespace PanelTui.CommandLine;

/// <summary>`paneltui new FILE`: a commented schedule to start from.</summary>
internal sealed class NewVerb : Verb
{
    public override string Name => "new";

    public override string Summary => "write a commented schedule to start from";

    public override string Page => """
        Write a commented schedule to start from. An existing file is never overwritten.

        Usage:
          paneltui new FILE

        Examples:
          paneltui new shed.panel.yaml      then: paneltui shed.panel.yaml
          paneltui new -                    on standard output
        """;

    protected override void Describe(Command command, Streams streams)
    {
        var file = new Argument<string>("FILE") { Description = "the file to write, by convention NAME.panel.yaml; - for standard output" };
        command.Add(file);
        command.SetAction(parsed => Write(parsed.GetRequiredValue(file), streams));
    }

    private static int Write(string path, Streams streams)
    {
        if (path == "-")
        {
            streams.Out.Write(Starter.Text);
            return ExitCode.Clean;
        }

        try
        {
            ScheduleFile.Save(path, SourceText.FromString(Starter.Text), DiskState.Missing);
        }
        catch (FileProblem problem)
        {
            streams.Error.WriteLine(Presentation.DisplayText.Clean(problem.Message));
            return ExitCode.Unusable;
        }

        streams.Out.WriteLine($"Wrote {path}. Open it: paneltui {path}");
        return ExitCode.Clean;
    }
}
