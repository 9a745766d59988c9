using PanelTui.Engine.Codes;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Rules.Standby;

/// <summary>What no key of the schedule tells of an interlock, and an inspector asks first.</summary>
public sealed class InterlockToLookAtRule : CodeRule
{
    public override string Name => "interlock-to-look-at";

    public override Severity Severity => Severity.Note;

    public override string Summary =>
        "An interlock is listed for this panel and its pair of breakers, and a back-fed breaker is held down.";

    public override string Why =>
        "A back-fed breaker that comes loose has live stabs, and an interlock made for another panel may not keep "
        + "the two supplies apart.";

    public override string Advice =>
        "Read the label of the interlock for the panel's type, look for the fastener of the back-fed breaker and "
        + "for LINE and LOAD marks on it, and ask the authority whether an interlock is accepted.";

    public override CodeSection? Section { get; } = Nec.Section("408.36(D)");

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (context.Schedule.Transfer?.Kind == TransferKind.Interlock)
            yield return Found(context, "An interlock chooses the supply, so a breaker is fed from its load side.");
    }
}
