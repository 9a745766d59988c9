using System.CommandLine;

namespace PanelTui.CommandLine;

/// <summary>`paneltui merge BASE OURS THEIRS`: git's merge driver, and a merge by hand.</summary>
internal sealed class MergeVerb : Verb
{
    public override string Name => "merge";

    public override string Summary => "merge two versions by what they say about the panel";

    protected override bool Writes => true;

    public override string Page => """
        Merge two versions of a schedule that come from one, by what they say: circuits
        are recognised by id, or by space and name, wherever they stand. The result is
        written into OURS; what a person has to settle stands there between git's
        conflict markers, such as one value changed in two ways or two breakers in one
        space.

        Usage:
          paneltui merge BASE OURS THEIRS [--output FILE] [--json] [--dry-run]

        Examples:
          paneltui merge base.yaml shed.panel.yaml theirs.yaml
          paneltui merge base.yaml ours.yaml theirs.yaml --output shed.panel.yaml
          paneltui git-setup                 has git do this in merges and rebases

        When a version cannot be read, the lines are merged as git does, and always
        marked. --output - writes to standard output. --json tells what was merged and
        what is left to settle (docs/json.md). Git's driver names the file with --path,
        and the length of its markers with --marker-size.
        Exit codes: 0 merged, 1 something is left to settle, 2 nothing could be written.
        """;

    protected override void Describe(Command command, Streams streams)
    {
        var versions = new Argument<string[]>("VERSION") { Arity = new ArgumentArity(3, 3), Description = "BASE OURS THEIRS" };
        var output = new Option<string?>("--output", "-o") { Description = "the file to write instead of OURS; - for standard output" };
        var size = new Option<int>("--marker-size") { Description = "a number of characters in a conflict marker", DefaultValueFactory = _ => 7 };
        var path = new Option<string?>("--path") { Description = "what messages call the file" };
        command.Add(versions);
        command.Add(output);
        command.Add(size);
        var json = JsonOption();
        command.Add(path);
        command.Add(json);
        command.SetAction(parsed =>
        {
            var files = parsed.GetRequiredValue(versions);
            var target = parsed.GetValue(output) ?? files[1];
            if (target == MergeRun.StandardOutput && (parsed.GetValue(json) || streams.WritesNothing))
                return Misuse(streams, "'--output -' writes the merged file to standard output, so '--json' and '--dry-run' do not go with it");
            if (streams.WritesNothing && parsed.GetResult(size) is { Implicit: false })
                return Misuse(streams, "'--dry-run' writes no markers, so '--marker-size' does not go with it");
            return new MergeRun(files[0], files[1], files[2], target, parsed.GetValue(path) ?? target, parsed.GetValue(size), parsed.GetValue(json)).Run(streams);
        });
    }
}
