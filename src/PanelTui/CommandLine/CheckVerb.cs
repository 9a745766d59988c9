using System.CommandLine;
using PanelTui.Engine.Rules;

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
          paneltui check FILE|FOLDER... [--severity LEVEL] [--quiet | --json]
                         [--color WHEN]

        Examples:
          paneltui check shed.panel.yaml
          paneltui check *.panel.yaml --json
          paneltui check schedules/          every *.panel.yaml in it and below
          git show HEAD:shed.panel.yaml | paneltui check -

        A finding: FILE:LINE:COLUMN: error|warning|note: what is wrong [rule] (section)
        --severity error or warning leaves out what is less severe; the exit code
        stays the same. --quiet prints nothing: the exit code tells. --color is auto
        (on a terminal, unless NO_COLOR is set), always or never.
        On a terminal long lines fold. docs/json.md tells about --json.
        Exit codes: 0 no error, 1 one error or more, 2 a file cannot be read as a
        schedule.
        """;

    protected override void Describe(Command command, Streams streams)
    {
        var files = new Argument<string[]>("FILE") { Arity = ArgumentArity.OneOrMore, Description = "a schedule; - for standard input" };
        var json = JsonOption();
        var quiet = QuietOption("print nothing; the exit code tells");
        var severity = SeverityFilter.Option();
        var color = Coloring.Option();
        command.Add(files);
        foreach (var option in (Option[])[json, quiet, severity, color]) command.Add(option);
        command.SetAction(parsed =>
        {
            var form = new CheckForm(
                parsed.GetValue(json), parsed.GetValue(quiet), SeverityFilter.Of(parsed.GetValue(severity)!), parsed.GetValue(color)!);
            return form.WhyNot(parsed.GetResult(severity) is { Implicit: false }, parsed.GetResult(color) is { Implicit: false }) is { } why
                ? Misuse(streams, why)
                : Check(parsed.GetRequiredValue(files), form, streams);
        });
    }

    private static int Check(string[] files, CheckForm form, Streams streams)
    {
        var inputs = files.SelectMany(Schedules).Select(file => ScheduleInput.Read(file, streams)).ToList();
        if (form.AsJson) CheckJson.Write(streams.Out, inputs, form.Lowest);
        var inColor = Coloring.IsOn(form.Color, streams);
        foreach (var input in inputs)
        {
            if (input.ProblemLine is { } problem) streams.Error.WriteLine(problem);
            else if (form.IsText) WriteText(CheckReport.Lines(input.Name, input.Snapshot!, form.Lowest), inColor, streams);
        }

        if (form.IsText && inputs.Count > 1) streams.Say(CheckSummary.OfAll(inputs));
        return inputs.Max(input => ExitCode.Of(input.Snapshot?.Assessment));
    }

    /// <summary>A folder stands for the schedules in it and below, by name; one without any stands for itself, so that it is told.</summary>
    private static IEnumerable<string> Schedules(string path)
    {
        if (!Directory.Exists(path)) return [path];
        var found = Directory.EnumerateFiles(path, "*.panel.yaml", SearchOption.AllDirectories).Order(StringComparer.Ordinal).ToList();
        return found.Count > 0 ? found : [path];
    }

    private static void WriteText(IEnumerable<ReportLine> lines, bool inColor, Streams streams)
    {
        foreach (var row in lines.SelectMany(line => line.Rows(streams.Screen, inColor))) streams.Out.WriteLine(row);
    }
}

/// <summary>How `check` prints.</summary>
internal sealed record CheckForm(bool AsJson, bool IsQuiet, Severity Lowest, string Color)
{
    public bool IsText => !AsJson && !IsQuiet;

    /// <summary>One sentence where two options contradict each other or one would be ignored; null where they fit.</summary>
    public string? WhyNot(bool namesSeverity, bool namesColor) => this switch
    {
        { AsJson: true, IsQuiet: true } => "'--quiet' prints nothing and '--json' an object: give one of them",
        { IsQuiet: true } when namesSeverity || namesColor => "'--quiet' prints nothing, so '--severity' and '--color' do not go with it",
        { AsJson: true } when namesColor => "'--json' has no color, so '--color' does not go with it",
        _ => null,
    };
}
