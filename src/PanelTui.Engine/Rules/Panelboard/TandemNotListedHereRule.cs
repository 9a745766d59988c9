using PanelTui.Engine.Codes;

namespace PanelTui.Engine.Rules.Panelboard;

/// <summary>Tandem breakers go only where the panel's listing allows them.</summary>
public sealed class TandemNotListedHereRule : CodeRule
{
    public override string Name => "tandem-not-listed-here";

    public override Severity Severity => Severity.Error;

    public override string Summary => "A tandem half may sit only in a space that is marked for tandem breakers.";

    public override string Why =>
        "A tandem breaker elsewhere puts more circuits on the bus than the panel is listed for.";

    public override string Advice =>
        "Read the panel's label: list its tandem spaces under tandem_spaces, or move the breaker.";

    public override CodeSection? Section { get; } = Nec.Section("408.54");

    public override IEnumerable<Finding> Check(RuleContext context) =>
        from circuit in context.Circuits
        let halves = circuit.Spaces.Where(space => space.IsHalf && !context.Panel.TandemSpaces.Contains(space.Number)).ToArray()
        where halves.Length > 0
        select Found(
            context,
            halves,
            $"{RuleWords.Place(circuit)} is a tandem half at {string.Join(" and ", halves)}; "
            + (context.Panel.TandemSpaces.Length == 0
                ? "no space of the panel is marked for tandem breakers."
                : $"spaces marked for tandem breakers are {string.Join(", ", context.Panel.TandemSpaces)}."));
}
