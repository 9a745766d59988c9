using PanelTui.Engine.Codes;
using PanelTui.Engine.Codes.Tables;

namespace PanelTui.Engine.Rules.Standby;

/// <summary>Circuits at 120 V need a neutral from the source; a 250 V outlet has none.</summary>
public sealed class SourceOutletWithoutNeutralRule : CodeRule
{
    public override string Name => "source-outlet-without-neutral";

    public override Severity Severity => Severity.Error;

    public override string Summary => "The outlet of the source has a neutral.";

    public override string Why => "Without a neutral the 120 V circuits have no way back: their voltage drifts with the load and can destroy what is plugged in.";

    public override string Advice =>
        "Look for another outlet of the source, one with two hots, neutral and ground; leave this one off the panel.";

    public override CodeSection? Section { get; } = Nec.FromMemory("110.3(B)");

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (OutletConfigurations.Find(context.Schedule.Source?.Outlet) is { HasNeutral: false } outlet)
        {
            yield return Found(
                context,
                $"The {outlet.Name} outlet of the source has {outlet.Volts} V and no neutral; this panel needs one.",
                "Read the outlet's marking; use a 125/250 V outlet with four wires, such as L14-30 or 14-50.");
        }
    }
}
