using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Rules.Standby;

/// <summary>The one sign that fits the transfer equipment; which one hangs there no key tells.</summary>
public sealed class SignAtInletRule : CodeRule
{
    public override string Name => "sign-at-inlet";

    public override Severity Severity => Severity.Note;

    public override string Summary => "The inlet for a generator names the only kind that may be plugged in.";

    public override string Why =>
        "The next generator may be of the other kind, and then the neutral is bonded twice or nowhere.";

    public override string Advice => "Compare the sign at the inlet word by word; put it up where there is none.";

    public override CodeSection? Section => SignTexts.AtInlet;

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (context.Schedule is
            { Source: { Kind: SourceKind.Generator, Outlet: not null }, Transfer.NeutralIsSwitched: { } switches })
        {
            yield return Found(
                context,
                $"The transfer equipment {(switches ? "switches" : "does not switch")} the neutral, "
                + "so the sign at the inlet reads: "
                + (switches ? SignTexts.SeparatelyDerived : SignTexts.NotSeparatelyDerived) + ".");
        }
    }
}
