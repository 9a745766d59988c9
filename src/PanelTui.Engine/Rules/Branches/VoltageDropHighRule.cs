using PanelTui.Engine.Codes;
using PanelTui.Engine.Sizing;

namespace PanelTui.Engine.Rules.Branches;

/// <summary>A long thin wire starves its load; the notes of the code name 3 % for a branch and 5 % together, and bind nobody.</summary>
public sealed class VoltageDropHighRule : CodeRule
{
    public override string Name => "voltage-drop-high";

    public override Severity Severity => Severity.Warning;

    public override string Summary => "A branch circuit loses no more than 3 % on its way, and no more than 5 % together with the feeder.";

    public override string Why => "Lights dim, motors start hard, and a low source voltage sinks further.";

    public override string Advice =>
        "Check length and size; a larger wire or a shorter way loses less. The limit is a note of the code, not a rule, unless adopted.";

    public override CodeSection? Section => BranchLoad.ConductorSection;

    public override IEnumerable<Finding> Check(RuleContext context) =>
        from branch in context.Branches
        let message = Message(branch.Drop)
        where message is not null
        select Found(
            context,
            [branch.Circuit.Space],
            $"{RuleWords.Place(branch.Circuit)} {message}.",
            "Check its length and its wire; a larger wire loses less.");

    private static string? Message(BranchDrop? drop) => drop switch
    {
        { Share: var share } when share > VoltageDropLimits.Alone =>
            $"loses {RuleWords.Beyond(share, VoltageDropLimits.Alone)} in {drop.Run.Length} of {drop.Run.Conductor}; "
            + $"the code's note names {VoltageDropLimits.Alone}",
        { WithFeeder: { } together } when together > VoltageDropLimits.Together =>
            $"loses {RuleWords.Beyond(together, VoltageDropLimits.Together)} together with the feeder; "
            + $"the code's note names {VoltageDropLimits.Together}",
        _ => null,
    };
}
