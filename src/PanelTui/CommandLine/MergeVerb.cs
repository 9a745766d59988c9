using System.CommandLine;

namespace PanelTui.CommandLine;

/// <summary>`paneltui merge BASE OURS THEIRS`: git's merge driver, and a merge by hand.</summary>
internal sealed class MergeVerb : Verb
{
    public override string Name => "merge";

    public override string Summary => "merge two versions by what they say about the panel";

    public override string Page => """
        Merge two versions of a schedule that come from one, by what they say: circuits
        are recognised by id, or by space and name, wherever they stand. The result is
        written into OURS; what a person has to settle stands there between git's
        conflict markers, such as one value changed in two ways or two breakers in one
        space.

        Usage:
          paneltui merge BASE OURS THEIRS [--output FILE]

        Examples:
          paneltui merge base.yaml shed.panel.yaml theirs.yaml
          paneltui merge base.yaml ours.yaml theirs.yaml --output shed.panel.yaml
          paneltui git-setup                 has git do this in merges and rebases

        When a version cannot be read, the lines are merged as git does, and always
        marked.
        Exit codes: 0 merged, 1 something is left to settle, 2 nothing could be written.
        """;

    protected override void Describe(Command command, Streams streams)
    {
        var versions = new Argument<string[]>("VERSION") { Arity = new ArgumentArity(3, 3), Description = "BASE OURS THEIRS" };
        var output = new Option<string?>("--output", "-o") { Description = "write here instead of into OURS" };
        var size = new Option<int>("--marker-size") { Description = "characters of a conflict marker", DefaultValueFactory = _ => 7 };
        var path = new Option<string?>("--path") { Description = "what messages call the file" };
        command.Add(versions);
        command.Add(output);
        command.Add(size);
        command.Add(path);
        command.SetAction(parsed =>
        {
            var files = parsed.GetRequiredValue(versions);
            var target = parsed.GetValue(output) ?? files[1];
            return new MergeRun(files[0], files[1], files[2], target, parsed.GetValue(path) ?? target, parsed.GetValue(size)).Run(streams);
        });
    }
}
