using PanelTui.Engine.Codes;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Rules.Branches;

/// <summary>Equipment that sheds loads by itself leaves a dwelling the circuits that it must have.</summary>
/// <remarks>
/// Who switches by hand chooses what runs, so nothing is said then. That shedding a required circuit wants a look is a reading.
/// </remarks>
public sealed class RequiredDwellingCircuitsShedRule : CodeRule
{
    public override string Name => "required-dwelling-circuits-shed";

    public override Severity Severity => Severity.Warning;

    public override string Summary =>
        "Load management does not shed the small-appliance, laundry, bathroom and garage circuits that a dwelling "
        + "must have.";

    public override string Why =>
        "Circuits that a dwelling must have stay required when they hang on this panel; shed, their outlets are "
        + "dead.";

    public override string Advice =>
        "Check what the equipment sheds, and ask the authority whether it may shed these circuits.";

    public override CodeSection? Section { get; } = Nec.Section("210.11(C)");

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        if (context.Schedule is not { Code.Occupancy: Occupancy.Dwelling, Transfer.LoadManagement: true })
            yield break;
        foreach (var run in context.Scenarios)
        {
            var running = run.Circuits.Select(circuit => circuit.Ordinal).ToHashSet();
            var shed = context.Circuits.Where(circuit => IsRequired(circuit) && !running.Contains(circuit.Ordinal)).ToArray();
            if (shed.Length > 0)
                yield return Found(
                    context, shed.SelectMany(circuit => circuit.Spaces), $"{run.Name} leaves out {RuleWords.Places(shed)}.");
        }
    }

    private static bool IsRequired(Circuit circuit) => !circuit.IsSpare && circuit.Loads.Any(load => load.Kind switch
    {
        LoadKind.SmallAppliance or LoadKind.Laundry => true,
        LoadKind.Receptacle => circuit.Places.Contains("bathroom") || circuit.Places.Contains("garage"),
        LoadKind.Lighting or LoadKind.Range or LoadKind.WallOven or LoadKind.Cooktop or LoadKind.Dryer
            or LoadKind.Appliance or LoadKind.WaterHeater or LoadKind.SpaceHeat or LoadKind.Cooling
            or LoadKind.HeatPump or LoadKind.Motor or LoadKind.Ev or LoadKind.Kitchen or LoadKind.Other => false,
        _ => throw Unnamed.Of(load.Kind),
    });
}
