using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Rules.Panelboard;

/// <summary>Each pole of a breaker meets a leg of its own.</summary>
public sealed class MorePolesThanLegsRule : CodeRule
{
    public override string Name => "more-poles-than-legs";

    public override Severity Severity => Severity.Error;

    public override string Summary => "A breaker can have no more poles than the system has legs.";

    public override string Why => "Two poles on one leg have no voltage between them.";

    public override string Advice => "Check the poles of the breaker and the system of the panel.";

    public override IEnumerable<Finding> Check(RuleContext context) =>
        from circuit in context.Circuits
        let poles = circuit.Breaker.Poles
        let legs = context.Panel.System.MostPoles
        where poles > legs
        select Found(
            context,
            circuit.Spaces,
            $"{RuleWords.Place(circuit)} has {Shown.Exactly(poles)} poles; {context.Panel.System} has "
            + $"{Shown.Exactly(legs)} {(legs == 1 ? "leg" : "legs")}.");
}
