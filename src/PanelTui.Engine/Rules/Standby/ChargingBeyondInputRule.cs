using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;
using PanelTui.Engine.Running;
using PanelTui.Engine.Running.Endurance;

namespace PanelTui.Engine.Rules.Standby;

/// <summary>Charging is a load on what feeds it, beside all that is passed through, on each leg.</summary>
public sealed class ChargingBeyondInputRule : CodeRule
{
    public override string Name => "charging-beyond-input";

    public override Severity Severity => Severity.Warning;

    public override string Summary => "What runs and what charges together stay within the input of the unit, on each leg.";

    public override string Why =>
        "The charger gives way and the battery fills more slowly than planned; with more running than the input takes, loads go dark.";

    public override string Advice =>
        "Check the input setting of the unit, which often comes lower than it may be set, lower source.charging.power to what is left, "
        + "or spread the loads over the legs.";

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (context.Schedule.Source is not { Charging: { From: not ChargingFrom.Solar, InputLimit: { } limit } charging } source)
            return [];
        var beyond =
            from run in context.Scenarios
            let input = ChargingInput.Of(source, charging, run.Legs.Select(leg => leg.Running), context.Panel.System)
            from pole in input.Poles
            where pole.Runs + input.AskedOfEach > pole.May
            orderby pole.Runs descending
            select Beyond(context, limit, run, input, pole);
        return beyond.Take(1);
    }

    private Finding Beyond(RuleContext context, Amperes limit, ScenarioRun run, ChargingInput input, InputPole pole)
    {
        var on = pole.Leg is { } leg ? $" on leg {leg}" : "";
        return Found(
            context,
            $"{run.Name} runs {RuleWords.Beyond(pole.Runs.Value, (pole.May!.Value - input.AskedOfEach).Value, "W")}{on} and charging adds {input.AskedOfEach}; the input of "
            + $"{limit} takes {pole.May}{(pole.Leg is null ? "" : " there")}.");
    }
}
