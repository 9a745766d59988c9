using PanelTui.Engine.Panels;
using PanelTui.Engine.Quantities;

namespace PanelTui.Engine.Rules.Branches;

/// <summary>Circuits without a wire, in a file that states the wires of others: one finding for all of them, at the first.</summary>
/// <remarks>Where no wire at all is written down nobody means to have wires checked.</remarks>
public sealed class ConductorNotStatedRule : CodeRule
{
    private const int MostNamed = 3;

    public override string Name => "conductor-not-stated";

    public override Severity Severity => Severity.Note;

    public override string Summary => "Where wires are written down, they are for every circuit.";

    public override string Why => "Without its wire nothing tells whether a breaker protects it, what it loses, or which grounding conductor it needs.";

    public override string Advice => "Read the size on the insulation at the breaker, with the panel de-energised, and write it as wire: 12 AWG Cu.";

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        Circuit[] used = [.. context.Circuits.Where(circuit => circuit is { IsSpare: false, Loads.IsEmpty: false })];
        Circuit[] without = [.. used.Where(circuit => circuit.Wire is null)];
        return without.Length == 0 || without.Length == used.Length
            ? []
            : [Found(
                context,
                without[0].Spaces,
                $"{Shown.Exactly(without.Length)} of {Shown.Exactly(used.Length)} circuits have no wire written down: {Named(without)}. "
                + "Breaker against wire, voltage drop and grounding conductor are not judged there.")];
    }

    private static string Named(Circuit[] circuits) => circuits.Length <= MostNamed + 1
        ? RuleWords.Places(circuits)
        : RuleWords.Listed([.. circuits.Take(MostNamed).Select(RuleWords.Place), $"{Shown.Exactly(circuits.Length - MostNamed)} more"]);
}
