using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;
using PanelTui.Engine.Running.Endurance;

namespace PanelTui.Engine.Rules.Standby;

/// <summary>Charging is a load on what feeds it, beside all that is passed through.</summary>
public sealed class ChargingBeyondInputRule : CodeRule
{
    public override string Name => "charging-beyond-input";

    public override Severity Severity => Severity.Warning;

    public override string Summary => "What runs and what charges together stay within the input of the unit.";

    public override string Why =>
        "The charger gives way and the battery fills more slowly than planned; with more running than the input takes, loads go dark.";

    public override string Advice =>
        "Check the input setting of the unit, which often comes lower than it may be set, and lower source.charging.power to what is left.";

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (context.Schedule.Source?.Charging is not { From: not ChargingFrom.Solar } charging
            || EnergySystem.InputOf(charging, context.Panel.System) is not { } may)
            return [];
        var heaviest = context.Scenarios.MaxBy(run => run.Running);
        return heaviest is not null && heaviest.Running + charging.Power > may ? [Beyond(context, charging, heaviest, may)] : [];
    }

    private Finding Beyond(RuleContext context, Charging charging, ScenarioRun run, Watts may) => Found(
        context,
        $"{run.Name} runs {RuleWords.Beyond(run.Running.Value, 0, "W")} and charging adds {charging.Power}; the input of "
        + $"{charging.InputLimit} a leg takes {may}.");
}
