using PanelTui.Engine.Codes;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Rules.Standby;

/// <summary>One 120 V unit on both legs leaves no voltage between them: 240 V loads see nothing.</summary>
public sealed class LineToLineLoadOnOneLegSourceRule : CodeRule
{
    public override string Name => "line-to-line-load-on-one-leg-source";

    public override Severity Severity => Severity.Error;

    public override string Summary => "A panel whose legs are in phase on standby carries no line-to-line loads.";

    public override string Why =>
        "With the legs in phase there is nothing between them: a 240 V load stands still, and what has 120 V "
        + "parts runs by halves.";

    public override string Advice =>
        "Check how the source is wired; feed this circuit from another panel or from a 120/240 V source.";

    public override CodeSection? Section { get; } = Nec.Section("710.15(C)");

    public override IEnumerable<Finding> Check(RuleContext context) =>
        context.Schedule.Source?.Arrangement != SourceArrangement.InPhase
            ? []
            : from circuit in context.Connected.Loads
                  .Where(load => !load.Placement.IsToNeutral)
                  .Select(load => load.Circuit)
                  .DistinctBy(circuit => circuit.Ordinal)
              select Found(
                  context,
                  circuit.Spaces,
                  $"{RuleWords.Place(circuit)} has a load from line to line; one 120 V unit on both legs leaves 0 V between them.");
}
