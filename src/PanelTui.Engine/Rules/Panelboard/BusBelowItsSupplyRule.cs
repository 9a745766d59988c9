using PanelTui.Engine.Codes;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Rules.Panelboard;

/// <summary>
/// A panel is protected, by its main or by the device ahead of it, at no more than the rating of its bus.
/// </summary>
public sealed class BusBelowItsSupplyRule : CodeRule
{
    public override string Name => "bus-below-its-supply";

    public override Severity Severity => Severity.Error;

    public override string Summary => "On either supply a device no larger than the bus must protect it.";

    public override string Why =>
        "With nothing of its own rating ahead of it, a bus can carry more than it is made for and nothing trips.";

    public override string Advice => "Check the rating on the panel's label, its main, and the devices ahead of it.";

    public override CodeSection? Section { get; } = Nec.Section("408.36");

    public override IEnumerable<Finding> Check(RuleContext context) =>
        context.Panel.Bus is not { } bus || context.Panel.Main?.Rating <= bus
            ? []
            : from supply in Supplies(context)
              where supply.Device > bus
              select Found(
                  context,
                  $"The bus is rated {bus}; {supply.Called} is {supply.Device}, and nothing of {bus} or less protects it.");

    /// <summary>The device ahead on each supply; the main where none is known.</summary>
    private static IEnumerable<(string Called, Amperes Device)> Supplies(RuleContext context)
    {
        var (feeder, source) = (context.Schedule.Feeder?.Ocpd, context.Schedule.Source?.Ocpd);
        if (feeder is { } normal)
            yield return ("the feeder's overcurrent device", normal);
        if (source is { } standby)
            yield return ("the source's breaker", standby);
        if (feeder is null && source is null && context.Panel.Main?.Rating is { } main)
            yield return ("its main breaker", main);
    }
}
