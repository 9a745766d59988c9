using PanelTui.Engine.Codes;

namespace PanelTui.Engine.Rules.Wiring;

/// <summary>A circuit came from another panel, and nobody wrote down whether its neutral came along.</summary>
public sealed class NeutralOfMovedCircuitNotRecordedRule : CodeRule
{
    public override string Name => "neutral-of-moved-circuit-not-recorded";

    public override Severity Severity => Severity.Warning;

    public override string Summary =>
        "Of each circuit that came from another panel it is written down whether its neutral came along.";

    public override string Why =>
        "A neutral left behind joins the two panels: GFCI and AFCI breakers trip at once, and on standby the "
        + "return path is missing.";

    public override string Advice => "Open both panels and follow the neutral; then write neutral_moved: yes or no.";

    public override CodeSection? Section { get; } = Nec.FromMemory("300.3(B)");

    public override IEnumerable<Finding> Check(RuleContext context) =>
        from circuit in context.Circuits
        where circuit is { MovedFrom.Length: > 0, NeutralMoved: null } && NeutralNeed.Of(circuit)
        select Found(
            context,
            circuit.Spaces,
            $"{RuleWords.Place(circuit)} came from {circuit.MovedFrom}; whether its neutral came along is not written down.");
}
