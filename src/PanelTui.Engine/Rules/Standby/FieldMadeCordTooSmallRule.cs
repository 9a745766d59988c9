using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Sizing;

namespace PanelTui.Engine.Rules.Standby;

/// <summary>Cord made up on site goes by the table of cords, which gives it less than a listed cord set of the same size is marked for.</summary>
public sealed class FieldMadeCordTooSmallRule : CodeRule
{
    public override string Name => "field-made-cord-too-small";

    public override Severity Severity => Severity.Warning;

    public override string Summary => "A cord made up on site carries what the breaker of the source lets through.";

    public override string Why => "A cord that is too small heats up, and most where it is coiled.";

    public override string Advice =>
        "Check the size printed on the cord; look for a larger cord or a listed cord set.";

    public override CodeSection? Section => CordAmpacity.SectionFor(null, true);

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (context.Chain.Of(LinkKind.Cord) is { Ok: false } cord)
        {
            yield return Found(
                context,
                $"Made up on site, a cord of {context.Schedule.Source!.Cord} carries {cord.Rating}; {cord.Ahead} is ahead of it.",
                "Look for the listing mark of a cord set, which goes by its own rating; else use a larger cord.") with
            {
                Cite = cord.Cite,
            };
        }
    }
}
