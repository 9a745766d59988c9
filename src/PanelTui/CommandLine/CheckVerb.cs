using System.CommandLine;

namespace PanelTui.CommandLine;

/// <summary>`paneltui check FILE…`: what is wrong with a schedule, a line a finding.</summary>
internal sealed class CheckVerb : Verb
{
    public override string Name => "check";

    public override string Summary => "what is wrong with a schedule, a line a finding";

    public override string Page => """
        Check schedules: what cannot be read, and what the panel's figures and the code
        checks have to say. Findings tell what to look at; they replace no inspection.

        Usage:
          paneltui check FILE|FOLDER… [--json]

        Examples:
          paneltui check shed.panel.yaml
          paneltui check *.panel.yaml --json
          paneltui check schedules/          every *.panel.yaml in it and below
          git show HEAD:shed.panel.yaml | paneltui check -

        A finding: FILE:LINE:COLUMN: error|warning|note: what is wrong [rule] (section)
        Exit codes: 0 no error, 1 one error or more, 2 a file cannot be read as a
        schedule.
        """;

    protected override void Describe(Command command, Streams streams)
    {
        var files = new Argument<string[]>("FILE") { Arity = ArgumentArity.OneOrMore, Description = "schedules; - for standard input" };
        var json = new Option<bool>("--json") { Description = "one JSON object on standard output" };
        command.Add(files);
        command.Add(json);
        command.SetAction(parsed => Check(parsed.GetRequiredValue(files), parsed.GetValue(json), streams));
    }

    private static int Check(string[] files, bool asJson, Streams streams)
    {
        var inputs = files.SelectMany(Schedules).Select(file => ScheduleInput.Read(file, streams)).ToList();
        if (asJson) CheckJson.Write(streams.Out, inputs);
        foreach (var input in inputs)
        {
            if (input.Problem is { } problem) streams.Refuse(problem);
            else if (!asJson) WriteText(CheckReport.Lines(input.Name, input.Snapshot!), streams.Out);
        }

        return inputs.Max(input => ExitCode.Of(input.Snapshot?.Assessment));
    }

    /// <summary>A folder stands for the schedules in it and below, by name; one without any stands for itself, so that it is told.</summary>
    private static IEnumerable<string> Schedules(string path)
    {
        if (!Directory.Exists(path)) return [path];
        var found = Directory.EnumerateFiles(path, "*.panel.yaml", SearchOption.AllDirectories).Order(StringComparer.Ordinal).ToList();
        return found.Count > 0 ? found : [path];
    }

    private static void WriteText(IEnumerable<string> lines, TextWriter output)
    {
        foreach (var line in lines) output.WriteLine(line);
    }
}
