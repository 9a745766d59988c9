namespace PanelTui.Engine.Rules.Standby;

/// <summary>A battery that is kept back below what charging fills it to gives nothing out.</summary>
public sealed class ChargingStopsBelowReserveRule : CodeRule
{
    public override string Name => "charging-stops-below-reserve";

    public override Severity Severity => Severity.Warning;

    public override string Summary => "Charging fills the battery above the reserve that is kept back.";

    public override string Why =>
        "Charging that ends below the reserve leaves nothing to be used: the loads go dark at the reserve though what charges is there.";

    public override string Advice =>
        "Set source.charging.stops_at above source.battery.reserve, or keep less back, on the equipment and here.";

    public override IEnumerable<Finding> Check(RuleContext context) =>
        context.Schedule.Source is { Battery: { } battery, Charging: { } charging } && charging.StopsAt <= battery.Reserve
            ? [Found(context, $"Charging stops at {charging.StopsAt}, and {battery.Reserve} is kept back.")]
            : [];
}
