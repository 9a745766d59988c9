using PanelTui.Engine.Codes;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;

namespace PanelTui.Engine.Rules.Standby;

/// <summary>
/// What transfers by itself transfers all of it, so the source carries all of it, or something sheds loads.
/// </summary>
/// <remarks>
/// The calculated load; where the user chose it himself, the connected load, for by itself nobody chooses. VA count as watts.
/// </remarks>
public sealed class AutomaticTransferBeyondSourceRule : CodeRule
{
    public override string Name => "automatic-transfer-beyond-source";

    public override Severity Severity => Severity.Error;

    public override string Summary =>
        "A source that takes over by itself carries the whole load, or load management keeps the load within it.";

    public override string Why =>
        "Nobody is there to choose what runs: all of it comes on at once, and the source stalls or shuts down.";

    public override string Advice =>
        "Take circuits off this panel, add load management, transfer by hand, or plan for a larger source.";

    public override CodeSection? Section { get; } = Nec.Section((2017, "702.4(B)(2)"), (2023, "702.4(A)(2)"));

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (context is not { Demand: { } demand, Schedule.Transfer: { Kind: TransferKind.Automatic, LoadManagement: false } })
            return [];
        var limit = SourceLimit.Of(context.Schedule.Source, context.Panel.System);
        return demand.Method == DemandMethodName.Selected
            ? Beyond(context, "connected", LegSum.Of(context.Panel.System, Noncoincident.Largest(context.Connected.Loads)), limit)
            : Beyond(context, "calculated", demand.Legs, limit);
    }

    private IEnumerable<Finding> Beyond(RuleContext context, string kind, LegLoads loads, SourceLimit limit)
    {
        var worst = context.Panel.System.Legs.MaxBy(loads.VoltAmperesOn);
        if (limit.PerLeg is { } onLeg && loads.VoltAmperesOn(worst).Value > onLeg.Value)
            yield return Found(context, Message(kind, loads.VoltAmperesOn(worst), $" on leg {worst}", onLeg));
        else if (limit.InAll is { } inAll && loads.Total.Value > inAll.Value)
            yield return Found(context, Message(kind, loads.Total, " in all", inAll));
    }

    private static string Message(string kind, VoltAmperes load, string where, Watts limit) =>
        $"The source takes over by itself without load management; the {kind} load is "
        + $"{RuleWords.Beyond(load.Value, limit.Value, "VA")}{where}, and the source gives {limit}.";
}
