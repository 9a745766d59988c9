using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Rules.Panelboard;

/// <summary>A breaker, with all of its poles, sits in spaces that the panel has.</summary>
public sealed class BreakerPastLastSpaceRule : CodeRule
{
    public override string Name => "breaker-past-last-space";

    public override Severity Severity => Severity.Error;

    public override string Summary => "Every pole of a breaker needs a space that the panel has.";

    public override string Why =>
        "A breaker without a place in the panel feeds nothing, and its load is counted all the same.";

    public override string Advice => "Check the space, the poles, and the number of spaces of the panel.";

    public override IEnumerable<Finding> Check(RuleContext context) =>
        from circuit in context.Circuits
        let past = circuit.Spaces.Where(space => !context.Panel.Has(space)).ToArray()
        where past.Length > 0
        select Found(
            context,
            circuit.Spaces,
            $"{RuleWords.Place(circuit)} takes space {string.Join(" and ", past)}; "
            + $"the panel has {Shown.Exactly(context.Panel.Spaces)} spaces.");
}
