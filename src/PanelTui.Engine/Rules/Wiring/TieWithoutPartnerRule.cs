using PanelTui.Engine.Loads;

namespace PanelTui.Engine.Rules.Wiring;

/// <summary>A handle tie joins two breakers; one alone is a slip of the pen, or its partner was moved.</summary>
public sealed class TieWithoutPartnerRule : CodeRule
{
    public override string Name => "tie-without-partner";

    public override Severity Severity => Severity.Warning;

    public override string Summary => "A breaker that is said to be tied has a tied neighbour.";

    public override string Why => "A tie that is not there keeps no shared neutral from being opened under load.";

    public override string Advice => "Look for the tie: write tied: yes on the neighbour too, or take it away here.";

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        var judged = SharedNeutral.Together(context.Circuits)
            .SelectMany(shared => shared.Circuits)
            .Select(circuit => circuit.Ordinal)
            .ToHashSet();
        return
            from circuit in context.Circuits
            where circuit is { Tied: true, Breaker.Poles: 1 } && !judged.Contains(circuit.Ordinal)
            where !context.Circuits.Any(other => other.Tied && HandleTie.Reaches(circuit, other))
            select Found(context, circuit.Spaces, $"{RuleWords.Place(circuit)} is said to be tied, and no neighbour of it is.");
    }
}
