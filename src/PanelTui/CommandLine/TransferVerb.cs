using System.CommandLine;
using PanelTui.Presentation;

namespace PanelTui.CommandLine;

/// <summary>`paneltui transfer FILE`: the steps for going to standby and back, to print and hang beside the panel.</summary>
internal sealed class TransferVerb : Verb
{
    public override string Name => "transfer";

    public override string Summary => "the steps for going to standby and back, to print";

    public override string Page => """
        Write the steps for going to standby and back with this panel's equipment: first
        what must never happen, then the order for manual, interlock or automatic
        equipment, the circuits to leave off, and connecting the cables.

        Usage:
          paneltui transfer FILE [--json]

        Examples:
          paneltui transfer shed.panel.yaml
          paneltui transfer shed.panel.yaml > steps.txt

        The instructions of the equipment and local rules go before these steps.
        Exit codes: 0 written, 2 the file cannot be read.
        """;

    protected override void Describe(Command command, Streams streams)
    {
        var file = new Argument<string>("FILE") { Description = "a schedule; - for standard input" };
        var json = JsonOption();
        command.Add(file);
        command.Add(json);
        command.SetAction(parsed =>
        {
            if (AssessedFile.Read(parsed.GetRequiredValue(file), streams) is not { } assessment) return ExitCode.Unusable;
            if (parsed.GetValue(json)) streams.Out.WriteLine(TransferJson.Of(assessment));
            else foreach (var line in TransferSteps.Of(assessment)) streams.Out.WriteLine(line);
            return ExitCode.Clean;
        });
    }
}
