using PanelTui.Engine.Codes;
using PanelTui.Engine.Loads;

namespace PanelTui.Engine.Rules.Wiring;

/// <summary>
/// A name for a shared neutral that only one circuit has: the other was misspelt, or stayed in the old panel.
/// </summary>
public sealed class SharedNeutralWithoutPartnerRule : CodeRule
{
    public override string Name => "shared-neutral-without-partner";

    public override Severity Severity => Severity.Warning;

    public override string Summary => "A shared neutral has two circuits or more, all of them in this panel.";

    public override string Why =>
        "All hots of a multiwire circuit come from one panel. With one of them left in another panel the neutral "
        + "joins two supplies.";

    public override string Advice =>
        "Look for the other circuit: give it the same multiwire name, move it here, or take the name away.";

    public override CodeSection? Section { get; } = Nec.Section("210.4(A)");

    public override IEnumerable<Finding> Check(RuleContext context) =>
        from shared in SharedNeutral.Named(context.Circuits)
        where shared.Circuits is [{ Breaker.Poles: 1 }]
        let circuit = shared.Circuits[0]
        select Found(
            context,
            circuit.Spaces,
            $"{RuleWords.Place(circuit)} shares the neutral {circuit.Multiwire} with no other circuit of this panel.");
}
