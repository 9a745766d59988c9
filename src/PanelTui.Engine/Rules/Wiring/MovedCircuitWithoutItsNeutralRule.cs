using PanelTui.Engine.Codes;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Rules.Wiring;

/// <summary>Hot and neutral of a circuit belong to one panel.</summary>
public sealed class MovedCircuitWithoutItsNeutralRule : CodeRule
{
    public override string Name => "moved-circuit-without-its-neutral";

    public override Severity Severity => Severity.Error;

    public override string Summary => "A circuit that came from another panel brought its neutral along.";

    public override string Why =>
        "Its current returns through another panel: GFCI and AFCI breakers trip at once, and on standby the return "
        + "path runs over the old panel's neutral, or is missing.";

    public override string Advice =>
        "Bring the neutral of this circuit to the neutral bar of this panel, then write neutral_moved: yes.";

    public override CodeSection? Section { get; } = Nec.FromMemory("300.3(B)");

    public override IEnumerable<Finding> Check(RuleContext context) =>
        from circuit in context.Circuits
        where circuit.NeutralMoved == false && NeutralNeed.Of(circuit)
        select Found(context, circuit.Spaces, $"{RuleWords.Place(circuit)} left its neutral in {Old(circuit)}{Trips(circuit)}.");

    private static string Old(Circuit circuit) => circuit.MovedFrom is { Length: > 0 } panel ? panel : "its old panel";

    private static string Trips(Circuit circuit) => circuit.Breaker.Protection.Mark.Length == 0
        ? ""
        : $"; its {circuit.Breaker.Protection.Title} trips at once";
}
