using PanelTui.Engine.Codes;
using PanelTui.Engine.Loads;

namespace PanelTui.Engine.Rules.Wiring;

/// <summary>All hots of a multiwire circuit open together, so that nobody opens its neutral under load.</summary>
public sealed class SharedNeutralWithoutTieRule : CodeRule
{
    public override string Name => "shared-neutral-without-tie";

    public override Severity Severity => Severity.Error;

    public override string Summary =>
        "Breakers that share a neutral are one breaker of several poles, or their handles are tied.";

    public override string Why =>
        "With one breaker off the other still feeds the shared neutral: opening it puts up to 240 V on 120 V "
        + "loads, and on the hand.";

    public override string Advice =>
        "Look for a handle tie or put in a two-pole breaker; a tie needs neighbouring spaces. Write tied: yes once "
        + "it is there.";

    public override CodeSection? Section { get; } = Nec.Section("210.4(B)");

    public override IEnumerable<Finding> Check(RuleContext context) =>
        from shared in SharedNeutral.Together(context.Circuits)
        let fault = FaultOf(shared)
        where fault is not null
        select Found(context, shared.Spaces, $"{RuleWords.Places(shared.Circuits)} share a neutral; {fault}.");

    private static string? FaultOf(SharedNeutral shared)
    {
        if (shared.Circuits.Any(circuit => !circuit.Tied))
            return $"no handle tie is written down for {RuleWords.Places(shared.Circuits.Where(circuit => !circuit.Tied))}";
        return shared.Circuits.Zip(shared.Circuits.Skip(1)).All(pair => HandleTie.Reaches(pair.First, pair.Second))
            ? null
            : "they are said to be tied, but no tie reaches from one to the other";
    }
}
