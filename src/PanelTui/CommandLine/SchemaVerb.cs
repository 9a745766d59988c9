using System.CommandLine;
using PanelTui.Presentation;

namespace PanelTui.CommandLine;

/// <summary>`paneltui schema`: the format as a JSON Schema, for text editors.</summary>
internal sealed class SchemaVerb : Verb
{
    public override string Name => "schema";

    public override string Summary => "the format as a JSON Schema, for text editors";

    public override string Page => """
        Print the format of schedules as a JSON Schema, draft 7. A text editor that
        knows the YAML language server then completes keys and explains them: `paneltui
        new` writes the line that names the schema as the first of the file.

        Usage:
          paneltui schema

        Examples:
          paneltui schema > panel.schema.json

        Exit code: 0 printed.
        """;

    protected override void Describe(Command command, Streams streams) => command.SetAction(_ =>
    {
        streams.Out.WriteLine(ScheduleSchema.Text);
        return ExitCode.Clean;
    });
}
