using System.CommandLine;
using PanelTui.Sheets;
using PanelTui.Sheets.Formats;
using PanelTui.Sheets.Layout;

namespace PanelTui.CommandLine;

/// <summary>`paneltui print WHAT FILE`: the sheets for the door and the permit folder.</summary>
internal sealed class PrintVerb : Verb
{
    public override string Name => "print";

    public override string Summary => "directory, labels, signs, load sheet, diagram, parts";

    protected override bool Writes => true;

    public override string Page => """
        Write the sheets that go on the door and into the permit folder.

        Usage:
          paneltui print WHAT FILE [-o OUT] [--format F] [--paper P] [--tape MM]
              [--force] [--quiet | --json] [--dry-run]

        What:
        {kinds}
          all        each of them, into the folder OUT

        Examples:
          paneltui print directory shed.panel.yaml              on the screen
          paneltui print directory shed.panel.yaml -o door.pdf
          paneltui print diagram shed.panel.yaml -o one-line.svg
          paneltui print parts shed.panel.yaml -o parts.csv
          paneltui print all shed.panel.yaml -o permit --paper a4

        Formats: {formats}; by the ending of OUT where none is
        named. Without OUT, and with -o -, the sheet goes to standard output, as text
        where no format is named. csv is for lists, svg for pictures.
        Paper for pdf: letter (the default), a4, pocket (5 by 8 inches, for the door).
        Tape for labels in millimeters: 9, 12 (the default), 18, 24.
        An existing file is not overwritten without --force. --json tells what was
        written (docs/json.md); --quiet leaves that out.
        Exit codes: 0 written, 1 written and errors found, 2 the file or the command
        line is not usable.
        """.Replace("{kinds}", string.Join('\n', SheetKind.All.Select(kind => $"  {kind.Name,-10} {kind.Summary}")), StringComparison.Ordinal)
        .Replace("{formats}", Formats, StringComparison.Ordinal);

    private static string Formats => string.Join(", ", SheetFormat.All.Select(known => known.Name));

    protected override void Describe(Command command, Streams streams)
    {
        var what = new Argument<string>("WHAT") { Description = "a sheet, or all" };
        var file = new Argument<string>("FILE") { Description = "a schedule; - for standard input" };
        var format = new Option<string?>("--format") { Description = Formats };
        var output = new Option<string?>("--output", "-o") { Description = "the file to write, - for standard output; for all, the folder" };
        var paper = new Option<string?>("--paper") { Description = "letter, a4 or pocket" };
        var tape = new Option<int?>("--tape") { Description = "the label tape's width in millimeters" };
        var force = new Option<bool>("--force") { Description = "overwrite files that exist" };
        var quiet = QuietOption("leave out what was written");
        var json = JsonOption();
        what.CompletionSources.Add([.. SheetKind.All.Select(kind => kind.Name), "all"]);
        format.CompletionSources.Add([.. SheetFormat.All.Select(known => known.Name)]);
        paper.CompletionSources.Add([.. Paper.All.Select(known => known.Name)]);
        command.Add(what);
        command.Add(file);
        foreach (var option in new Option[] { format, output, paper, tape, force, quiet, json }) command.Add(option);
        command.SetAction(parsed =>
        {
            var order = new PrintOrder(
                parsed.GetRequiredValue(what), parsed.GetRequiredValue(file), parsed.GetValue(format), parsed.GetValue(output), parsed.GetValue(paper),
                parsed.GetValue(tape), parsed.GetValue(force), parsed.GetValue(quiet), parsed.GetValue(json), streams.WritesNothing);
            return order.WhyNot is { } why ? Misuse(streams, why) : new PrintRun(order, streams).Of();
        });
    }
}
