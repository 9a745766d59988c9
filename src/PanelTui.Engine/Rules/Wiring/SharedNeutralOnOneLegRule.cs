using PanelTui.Engine.Codes;
using PanelTui.Engine.Loads;
using PanelTui.Engine.Panels;

namespace PanelTui.Engine.Rules.Wiring;

/// <summary>
/// On different legs the currents of a shared neutral cancel; on one leg they add, and no breaker sees the sum.
/// </summary>
public sealed class SharedNeutralOnOneLegRule : CodeRule
{
    public override string Name => "shared-neutral-on-one-leg";

    public override Severity Severity => Severity.Error;

    public override string Summary => "Circuits that share a neutral sit on different legs.";

    public override string Why =>
        "On one leg the currents add on the neutral, up to the sum of the breakers, and no breaker sees that sum. "
        + "Spaces 1 and 2 are one leg, and so are the halves of a tandem.";

    public override string Advice => "Move one of them to a space on another leg, or give it a neutral of its own.";

    /// <remarks>The definition of a multiwire branch circuit: conductors with a voltage between them.</remarks>
    public override CodeSection? Section { get; } = Nec.FromMemory("Article 100");

    public override IEnumerable<Finding> Check(RuleContext context) =>
        from shared in SharedNeutral.Together(context.Circuits)
        from leg in context.Panel.System.Legs
        let meeting = shared.Circuits.Where(circuit => circuit.Legs(context.Panel.System).Contains(leg)).ToArray()
        where meeting.Length > 1
        select Found(
            context,
            meeting.SelectMany(circuit => circuit.Spaces),
            $"{RuleWords.Places(meeting)} share a neutral and sit on leg {leg}{Halves(meeting)}: "
            + $"the neutral can carry {RuleWords.Sum(meeting.Select(circuit => circuit.Breaker.Rating))}.");

    private static string Halves(Circuit[] meeting) =>
        meeting.All(circuit => circuit.Space.IsHalf && circuit.Space.Number == meeting[0].Space.Number)
            ? ", the halves of one tandem"
            : "";
}
