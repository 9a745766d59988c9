using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Rules.Standby;

/// <summary>The sign that a panel on one 120 V supply carries.</summary>
public sealed class SignAtOneLegSourceRule : CodeRule
{
    public override string Name => "sign-at-one-leg-source";

    public override Severity Severity => Severity.Note;

    public override string Summary => "A panel of two legs that one 120 V unit feeds carries a sign that says so.";

    public override string Why => "Whoever adds a circuit later cannot see that both legs are in phase.";

    public override string Advice => "Look for the sign at the panel; put it up where there is none.";

    public override CodeSection? Section => SignTexts.AtPanelOnOneLegSource;

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (context is { Schedule.Source.Arrangement: SourceArrangement.InPhase, Panel.System.Legs.Length: > 1 })
            yield return Found(
                context, $"One 120 V unit feeds both legs, so the sign at the panel reads: {SignTexts.OneLegSource}");
    }
}
